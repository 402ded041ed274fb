import { labelOf, cellOf, type Fields } from '../../core/cells';
import type { Job, Table } from '../../core/wire';
import { useBay } from '../context';
import { FlownAgain } from './FlownAgain';

const NUMBER = 'flights-number';
const LEFT_OUT = 'flights-replay';

interface WorstProps {
    table: Table;
    fields: Fields;
    job: Job;
}

/** The flights to look at first, each flown again when it is pressed. */
export function WorstFlights({ table, fields, job }: WorstProps) {
    const bay = useBay();
    const columns = table.columns.map((field, k) => ({ field, k }));
    const shown = columns.filter(({ field }) => field !== NUMBER && field !== LEFT_OUT);
    const at = columns.find(({ field }) => field === NUMBER)?.k ?? 0;
    const flown = bay.played.flown.value;
    return (
        <>
            <div class="picture">
                <div class="scroll" tabIndex={0} role="region" aria-label={table.title}>
                    <table class="numbers worst-flights">
                        <caption>{table.title}</caption>
                        <thead>
                            <tr>
                                <th scope="col">play</th>
                                {shown.map(({ field }) => (
                                    <th key={field} scope="col">
                                        {labelOf(fields, field)}
                                    </th>
                                ))}
                            </tr>
                        </thead>
                        <tbody>
                            {table.rows.map(row => {
                                const number = row[at]?.si ?? 0;
                                const open =
                                    flown?.number === number && flown.seed === (job.seed ?? '');
                                return (
                                    <tr key={number} class={open ? 'picked' : undefined}>
                                        <th scope="row">
                                            <button
                                                type="button"
                                                class="plain small"
                                                aria-pressed={open}
                                                aria-disabled={job.stale !== undefined}
                                                onClick={() => {
                                                    if (job.stale !== undefined) return;
                                                    if (open) bay.played.close();
                                                    else {
                                                        void bay.played.fly({
                                                            number,
                                                            seed: job.seed ?? '',
                                                            profile: job.profile,
                                                        });
                                                    }
                                                }}
                                            >
                                                Flight {row[at]?.shown}
                                            </button>
                                        </th>
                                        {shown.map(({ field, k }) => {
                                            const value = row[k];
                                            const cell = value && cellOf(value);
                                            return (
                                                <td
                                                    key={field}
                                                    class={cell?.number ? 'number' : undefined}
                                                    data-field={field}
                                                    data-si={value?.si}
                                                >
                                                    {cell?.words}
                                                </td>
                                            );
                                        })}
                                    </tr>
                                );
                            })}
                        </tbody>
                    </table>
                </div>
            </div>
            <FlownAgain />
        </>
    );
}
