import type { LogFile, LogRead } from '../../core/wire';
import type { Way } from '../../state/reading';
import { KeepForm } from './KeepForm';

/** What the reader understood: each file with its columns, the rows set aside, and what else was noticed. */
export function Understood({ way }: { way: Extract<Way, { at: 'understood' }> }) {
    const { read } = way;
    return (
        <>
            {read.files.map(file => (
                <FileRead key={file.source} file={file} />
            ))}
            <Aside read={read} />
            {read.notes.length > 0 && (
                <details class="fold">
                    <summary>
                        {read.notes.length === 1 ? '1 note' : `${read.notes.length} notes`} of the
                        reader
                    </summary>
                    <ul>
                        {read.notes.map(({ source, line, text }, k) => (
                            <li key={k}>
                                {source}
                                {line > 0 && `, line ${line}`}: {text}
                            </li>
                        ))}
                    </ul>
                </details>
            )}
            <KeepForm way={way} />
        </>
    );
}

function FileRead({ file }: { file: LogFile }) {
    const { source, rows, first, last, clock, channels } = file;
    return (
        <div class="picture">
            <div class="scroll" tabIndex={0} role="region" aria-label={`Columns of ${source}`}>
                <table class="numbers">
                    <caption>
                        {source}: {rows} rows, {first.toFixed(3)} to {last.toFixed(3)} s, {clock}
                    </caption>
                    <thead>
                        <tr>
                            <th scope="col">in the file</th>
                            <th scope="col">understood as</th>
                            <th scope="col">kept in</th>
                        </tr>
                    </thead>
                    <tbody>
                        {channels.map(({ head, name, unit }) => (
                            <tr key={head}>
                                <th scope="row">{head}</th>
                                <td>{name}</td>
                                <td>{unit === '1' ? 'shares of 1' : unit}</td>
                            </tr>
                        ))}
                    </tbody>
                </table>
            </div>
        </div>
    );
}

/** Rows that were set aside: how many, and the first of them with the reason. */
function Aside({ read }: { read: LogRead }) {
    if (read.rejected.length === 0) return <p>No row was set aside.</p>;
    return (
        <>
            {read.rejected.map(({ source, count, first }) => (
                <details key={source} class="fold" open>
                    <summary>
                        {source}: {count === 1 ? '1 row' : `${count} rows`} set aside
                    </summary>
                    <ul>
                        {first.map(({ line, reason, text }) => (
                            <li key={line}>
                                line {line}: {reason}: <code>{text}</code>
                            </li>
                        ))}
                    </ul>
                    {count > first.length && (
                        <p class="quiet">All of them are kept beside the test.</p>
                    )}
                </details>
            ))}
        </>
    );
}
