import { csvOf } from '../core/csv';
import type { Numbers } from '../core/numbers';
import type { PictureProps } from './api';
import { saveCsv } from './save';
import { TableView } from './TableView';

/** A section that is a table and nothing else. */
export function TablePicture(props: PictureProps & { tables: readonly Numbers[] }) {
    const { section, tables, fileName, stale, selected, onShow } = props;
    return (
        <div class={`picture table${stale ? ' stale' : ''}`}>
            {tables.map(table => (
                <TableView key={table.id} table={table} selected={selected} onShow={onShow} />
            ))}
            <div class="picture-tools">
                <span class="save-words">save as</span>
                <button
                    type="button"
                    aria-label={`save ${section.title} as CSV`}
                    onClick={() => {
                        saveCsv(fileName, csvOf(tables));
                    }}
                >
                    CSV
                </button>
            </div>
        </div>
    );
}
