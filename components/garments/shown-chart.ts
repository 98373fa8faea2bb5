/** A size chart in words and lengths ready to show: one line a measure, one column a size. */
export type ShownChart = {
  /** What it is of and in which unit. */
  readonly name: string;
  readonly sizes: readonly string[];
  readonly measures: readonly {
    readonly measure: string;
    /** In the order of the sizes. */
    readonly values: readonly { readonly sizeId: string; readonly text: string; readonly isEstimated: boolean }[];
  }[];
};
