import type { Cell, Numbers } from '../core/numbers';
import type { Value } from '../core/wire';

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

/** Numbers in rows and columns; a wide one scrolls within itself. */
export function TableView({ table, under, selected, onShow }: TableProps) {
    const named = table.rows.every(row => row[0] && !row[0].number);
    const right = table.heads.map((_, k) => table.rows.some(row => row[k]?.number === true));
    return (
        <div class="scroll" tabIndex={0} role="region" aria-label={table.title}>
            <table class="numbers">
                <caption class={table.title === under ? 'unseen' : undefined}>
                    {table.title}
                </caption>
                <thead>
                    <tr>
                        {table.heads.map((head, k) => (
                            <th key={k} scope="col" class={right[k] ? 'number' : undefined}>
                                {head.field === undefined ? (
                                    head.label
                                ) : (
                                    <button
                                        type="button"
                                        class="field-name"
                                        data-field={head.field}
                                        title="formula, source and test"
                                    >
                                        {head.label}
                                    </button>
                                )}
                            </th>
                        ))}
                    </tr>
                </thead>
                <tbody>
                    {table.rows.map((row, n) => (
                        <Row
                            key={n}
                            row={row}
                            named={named}
                            right={right}
                            selected={selected}
                            onShow={onShow}
                        />
                    ))}
                </tbody>
            </table>
        </div>
    );
}

interface RowProps {
    row: readonly Cell[];
    named: boolean;
    right: readonly boolean[];
    selected: string | undefined;
    onShow: ((part: string) => void) | undefined;
}

function Row({ row, named, right, selected, onShow }: RowProps) {
    const first = row[0];
    const part = first?.value?.field === 'part' ? first.words : undefined;
    return (
        <tr class={part !== undefined && part === selected ? 'picked' : undefined}>
            {row.map((cell, k) =>
                k === 0 && named ? (
                    <th key={k} scope="row">
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
                    <td key={k} class={right[k] ? 'number' : undefined} {...dataOf(cell)}>
                        <Content cell={cell} />
                    </td>
                ),
            )}
        </tr>
    );
}
