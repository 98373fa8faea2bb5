import styles from './counts-table.module.css';
import type { GarmentWords } from './garment-words';

type CountsTableProps = {
  words: GarmentWords;
  /** Whether its name has to be said: there are others. */
  named: boolean;
};

/** How many of each size of one garment are ordered, with how wide each lies flat. */
export function CountsTable({ words: { title, heads, sizes, total }, named }: CountsTableProps) {
  return (
    <table className={styles.table}>
      <caption className={named ? undefined : 'visually-hidden'}>{title}</caption>
      <thead>
        <tr>
          <th scope="col">{heads.size}</th>
          <th scope="col">{heads.chest}</th>
          <th scope="col" className={styles.number}>
            {heads.count}
          </th>
        </tr>
      </thead>
      <tbody>
        {sizes.map(({ id, said, chest, quantity }) => (
          <tr key={id}>
            <th scope="row">{said}</th>
            <td>{chest}</td>
            <td className={styles.number}>{quantity}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row" colSpan={2}>
            {heads.total}
          </th>
          <td className={styles.number}>{total}</td>
        </tr>
      </tfoot>
    </table>
  );
}
