import styles from './chart-table.module.css';
import type { ShownChart } from './shown-chart';

type ChartTableProps = { chart: ShownChart; measureWord: string; estimatedWord: string };

/** A size chart as measures of a garment lying flat; estimated ones are marked. */
export function ChartTable({ chart, measureWord, estimatedWord }: ChartTableProps) {
  return (
    <section aria-label={chart.name} tabIndex={0} className={styles.scroll}>
      <table className={styles.table}>
        <caption className={styles.caption}>{chart.name}</caption>
        <thead>
          <tr>
            <th scope="col">
              <span className="visually-hidden">{measureWord}</span>
            </th>
            {chart.sizes.map((label) => (
              <th key={label} scope="col">
                {label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {chart.measures.map(({ measure, values }) => (
            <tr key={measure}>
              <th scope="row">{measure}</th>
              {values.map(({ sizeId, text, isEstimated }) => (
                <td key={sizeId} className={isEstimated ? styles.estimated : undefined}>
                  {isEstimated ? (
                    <>
                      <span aria-hidden="true">≈ </span>
                      <span className="visually-hidden">{estimatedWord}</span>
                    </>
                  ) : null}
                  {text}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
