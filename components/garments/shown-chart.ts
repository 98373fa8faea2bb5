/** A size chart in words and lengths ready to show. */
export type ShownChart = {
  readonly name: string;
  readonly measures: readonly string[];
  readonly sizes: readonly {
    readonly label: string;
    readonly values: readonly { readonly measure: string; readonly text: string; readonly isEstimated: boolean }[];
  }[];
};
