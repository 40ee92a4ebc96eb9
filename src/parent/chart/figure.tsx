import './chart.css';
import type { ComponentChildren } from 'preact';
import { chartWords } from './words';

export interface ChartTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface FigureProps {
  readonly title: string;
  /** What the marks and lines mean. */
  readonly legend?: ComponentChildren;
  readonly table: ChartTable;
  readonly children: ComponentChildren;
}

/** A chart with its title above and the same as a table behind it. */
export function Figure({ title, legend, table, children }: FigureProps) {
  const [head, ...columns] = table.columns;
  return (
    <figure class="chart">
      <figcaption>{title}</figcaption>
      {children}
      {legend && <p class="hint legend">{legend}</p>}
      <details>
        <summary>{chartWords.table}</summary>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that scrolls must be reachable by keyboard */}
        <section class="table-frame" tabIndex={0} aria-label={title}>
          <table class="plain">
            <thead>
              <tr>
                <th scope="col">{head}</th>
                {columns.map((column) => (
                  <th key={column} scope="col">
                    {column}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {table.rows.map(([first, ...cells], row) => (
                <tr key={`${row} ${first}`}>
                  <th scope="row">{first}</th>
                  {cells.map((cell, column) => (
                    <td key={table.columns[column + 1]}>{cell}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      </details>
    </figure>
  );
}
