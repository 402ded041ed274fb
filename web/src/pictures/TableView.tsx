import { useMemo, useRef, useState } from 'preact/hooks';
import type { Cell, Numbers } from '../core/numbers';
import { columnsBelow, firstRows } from '../core/tableFit';
import type { Value } from '../core/wire';
import { useWidth } from './useWidth';

/** What a test, or a reader's script, compares with the answer: every digit of the number. */
export function exact(value: Value | undefined) {
    if (value?.si === undefined) {
        return {};
    }
    return {
        'data-field': value.field,
        'data-si': String(value.si),
        ...(value.band && {
            'data-low': String(value.band.low),
            'data-high': String(value.band.high),
        }),
    };
}

function Content({ cell }: { cell: Cell }) {
    return (
        <>
            {cell.words}
            {cell.value?.shownBand && <span class="band"> ({cell.value.shownBand})</span>}
        </>
    );
}

function dataOf(cell: Cell) {
    return cell.value ? exact(cell.value) : cell.si !== undefined && { 'data-si': String(cell.si) };
}

interface TableProps {
    table: Numbers;
    /** What stands above it already; a caption that says the same is not shown again. */
    under?: string;
    selected?: string | undefined;
    onShow?: ((part: string) => void) | undefined;
}

/**
 * Numbers in rows and columns. Where they do not fit beside each other, long words stand below their row; what is
 * wider even so scrolls within itself. A long table shows its first rows until all are asked for.
 */
export function TableView({ table, under, selected, onShow }: TableProps) {
    const room = useRef<HTMLDivElement>(null);
    const width = useWidth(room);
    const below = useMemo(() => columnsBelow(table, width), [table, width]);
    const [wanted, setWanted] = useState(false);
    const named = table.rows.every(row => row[0] && !row[0].number);
    const right = table.heads.map((_, k) => table.rows.some(row => row[k]?.number === true));
    const few = firstRows(table.rows.length);
    const all = wanted || table.rows.slice(few).some(row => isPicked(row, selected));
    const rows = all ? table.rows : table.rows.slice(0, few);
    const shared = { named, right, below, selected, onShow };
    return (
        <>
            <div ref={room} class="scroll" tabIndex={0} role="region" aria-label={table.title}>
                <table class={below.length > 0 ? 'numbers stacked' : 'numbers'}>
                    <caption class={table.title === under ? 'unseen' : undefined}>
                        {table.title}
                    </caption>
                    <thead>
                        <Heads heads={table.heads} right={right} below={below} />
                    </thead>
                    {below.length > 0 ? (
                        rows.map((row, n) => (
                            <tbody key={n}>
                                <Row row={row} {...shared} />
                            </tbody>
                        ))
                    ) : (
                        <tbody>
                            {rows.map((row, n) => (
                                <Row key={n} row={row} {...shared} />
                            ))}
                        </tbody>
                    )}
                </table>
            </div>
            {few < table.rows.length && (
                <button
                    type="button"
                    class="small more-rows"
                    aria-pressed={all}
                    onClick={() => {
                        setWanted(!all);
                    }}
                >
                    all {table.rows.length} rows
                    <span class="unseen"> of {table.title}</span>
                </button>
            )}
        </>
    );
}

interface HeadsProps {
    heads: Numbers['heads'];
    right: readonly boolean[];
    below: readonly number[];
}

function Heads({ heads, right, below }: HeadsProps) {
    const beside = heads.length - below.length;
    const head = (k: number) => heads[k] && <HeadWords head={heads[k]} />;
    return (
        <>
            <tr>
                {heads.map((_, k) =>
                    below.includes(k) ? null : (
                        <th
                            key={k}
                            scope="col"
                            class={right[k] ? 'number' : undefined}
                            {...(k === 0 && below.length > 0 && { rowSpan: 1 + below.length })}
                        >
                            {head(k)}
                        </th>
                    ),
                )}
            </tr>
            {below.map(k => (
                <tr key={k}>
                    <th scope="col" colSpan={beside - 1}>
                        {head(k)}
                    </th>
                </tr>
            ))}
        </>
    );
}

function HeadWords({ head }: { head: Numbers['heads'][number] }) {
    return head.field === undefined ? (
        <>{head.label}</>
    ) : (
        <button
            type="button"
            class="field-name"
            data-field={head.field}
            title="formula, source and test"
        >
            {head.label}
        </button>
    );
}

interface RowProps {
    row: readonly Cell[];
    named: boolean;
    right: readonly boolean[];
    below: readonly number[];
    selected: string | undefined;
    onShow: ((part: string) => void) | undefined;
}

function partOf(row: readonly Cell[]): string | undefined {
    const first = row[0];
    return first?.value?.field === 'part' ? first.words : undefined;
}

function isPicked(row: readonly Cell[], selected: string | undefined): boolean {
    const part = partOf(row);
    return part !== undefined && part === selected;
}

function Row({ row, named, right, below, selected, onShow }: RowProps) {
    const part = partOf(row);
    const look = isPicked(row, selected) ? 'picked' : undefined;
    const tall = below.length > 0 ? { rowSpan: 1 + below.length } : {};
    return (
        <>
            <tr class={look}>
                {row.map((cell, k) =>
                    below.includes(k) ? null : k === 0 && named ? (
                        <th key={k} scope="row" {...tall}>
                            {part !== undefined && onShow ? (
                                <button
                                    type="button"
                                    class="part-name"
                                    onClick={() => {
                                        onShow(part);
                                    }}
                                >
                                    {cell.words}
                                </button>
                            ) : (
                                <Content cell={cell} />
                            )}
                        </th>
                    ) : (
                        <td
                            key={k}
                            class={right[k] ? 'number' : undefined}
                            {...(k === 0 && tall)}
                            {...dataOf(cell)}
                        >
                            <Content cell={cell} />
                        </td>
                    ),
                )}
            </tr>
            {below.map(
                k =>
                    row[k] && (
                        <tr key={k} class={look ? `below ${look}` : 'below'}>
                            <td colSpan={row.length - below.length - 1} {...dataOf(row[k])}>
                                <Content cell={row[k]} />
                            </td>
                        </tr>
                    ),
            )}
        </>
    );
}
