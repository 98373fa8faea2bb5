import styles from './chart-table.module.css';
import type { ShownChart } from './shown-chart';

/** A size chart as measures of a garment lying flat; estimated ones are marked. */
export function ChartTable({
  chart,
  sizeWord,
  estimatedWord,
}: {
  chart: ShownChart;
  sizeWord: string;
  estimatedWord: string;
}) {
  return (
    <section aria-label={chart.name} tabIndex={0} className={styles.scroll}>
      <table className={styles.table}>
        <caption className={styles.caption}>{chart.name}</caption>
        <thead>
          <tr>
            <th scope="col">{sizeWord}</th>
            {chart.measures.map((measure) => (
              <th key={measure} scope="col">
                {measure}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {chart.sizes.map(({ label, values }) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              {values.map(({ measure, text, isEstimated }) => (
                <td key={measure} className={isEstimated ? styles.estimated : undefined}>
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
