import { useCallback, useMemo, useRef, useState } from 'preact/hooks';
import { lineName, standingOf, worstOf } from '../core/faults';
import { cut } from '../core/labels';
import { cellWords, layMatrix, type MatrixLayout } from '../core/matrixLayout';
import { labelOf, numbersOf } from '../core/numbers';
import { wordsOf } from '../core/rows';
import type { Matrix, MatrixLine, Standing } from '../core/wire';
import type { PictureProps } from './api';
import { Frame } from './Frame';
import { HatchedStrip } from './Hatches';
import { StandingMark, StandingSwatch } from './StandingMark';
import { exact } from './TableView';
import { useWidth } from './useWidth';

const INSET = 18; // padding and frame of a picture
/** How many lines stand there before all are asked for. */
const FIRST_LINES = 16;
const STRIP = 8;

/** What each failure leaves, a line a failure; choosing a line plays it on the drawn rig. */
export function MatrixPicture(props: PictureProps & { section: Matrix }) {
    const { section, fields, fileName, stale, selected, onShow, chosen, onChoose } = props;
    const room = useRef<HTMLDivElement>(null);
    const width = Math.floor(useWidth(room) - INSET);
    const [all, setAll] = useState(false);
    const rows = all ? section.lines.length : Math.min(FIRST_LINES, section.lines.length);
    const laid = useMemo(
        () => layMatrix(section, fields, width, rows),
        [section, fields, width, rows],
    );
    const tables = useCallback(() => numbersOf(section, fields), [section, fields]);
    const lines = section.lines.slice(0, rows);
    const found = section.lines.findIndex(line => lineName(line) === chosen);
    const at = found < 0 ? 0 : found;
    const [current, setCurrent] = useState<number>();
    const stop = Math.min(current ?? at, rows - 1);
    const told = section.lines[current ?? at];
    const choose = (line: MatrixLine): void => {
        onChoose?.(lineName(line));
        onShow(line.part);
    };
    return (
        <Frame
            title={section.title}
            fileName={fileName}
            kind="matrix"
            tables={tables}
            stale={stale}
            selected={selected}
            onShow={onShow}
        >
            <div
                ref={room}
                class="scroll-wide"
                tabIndex={0}
                role="region"
                aria-label={`${section.title}: lines and columns`}
            >
                <svg
                    class="drawn natural"
                    width={laid.width + INSET}
                    viewBox={`0 0 ${laid.width} ${laid.height}`}
                    role="group"
                    aria-label={section.title}
                    data-title={section.title}
                >
                    <Heads laid={laid} />
                    <g>
                        {lines.map((line, k) => (
                            <Row
                                key={lineName(line)}
                                line={line}
                                laid={laid}
                                y={laid.top + laid.row * k}
                                stop={k === stop}
                                chosen={k === found}
                                words={spoken(line, fields)}
                                onCurrent={() => {
                                    setCurrent(k);
                                }}
                                onChoose={() => {
                                    choose(line);
                                }}
                            />
                        ))}
                    </g>
                </svg>
            </div>
            {section.lines.length > FIRST_LINES && (
                <div class="rig-tools">
                    <button
                        type="button"
                        aria-pressed={all}
                        onClick={() => {
                            setAll(!all);
                        }}
                    >
                        all {section.lines.length} lines
                    </button>
                </div>
            )}
            <p class="picture-key reading" aria-live="polite">
                {told ? <Told line={told} fields={fields} /> : '\u00a0'}
            </p>
            <p class="picture-key">
                {STANDINGS.map(([standing, words]) => (
                    <span key={standing} class="key-part">
                        <StandingSwatch standing={standing} /> {words}{' '}
                    </span>
                ))}
                Without a mark: nothing is asked of it. Dash: not computed, the table says why.
                Arrow keys go from line to line; Enter plays the failure on the drawn rig.
            </p>
        </Frame>
    );
}

const STANDINGS: readonly (readonly [Standing, string])[] = [
    ['holds', 'Ticked square: holds what is asked.'],
    ['short', 'Barred diamond: short of it.'],
    ['cannot be told', 'Half disk: cannot be told.'],
];

function spoken(line: MatrixLine, fields: PictureProps['fields']): string {
    const cells = line.cells.map(
        ({ value, standing }) =>
            `${labelOf(fields, value.field)} ${wordsOf(value)}${standing === 'told' ? '' : `, ${standing}`}`,
    );
    return `${lineName(line)}: ${worstOf(line)}. ${cells.join('; ')}`;
}

/** What no cell has room for: in words what it is short of, and what else does the same. */
function Told({ line, fields }: { line: MatrixLine; fields: PictureProps['fields'] }) {
    return (
        <>
            <strong>{lineName(line)}</strong>: {standingOf(line, field => labelOf(fields, field))}.
            {line.members.length > 0 && ` The same: ${line.members.join(', ')}.`}
        </>
    );
}

function Heads({ laid }: { laid: MatrixLayout }) {
    return (
        <g aria-hidden="true">
            {laid.cellsAt === 0 && (
                <text class="soft" x={0} y={laid.top - 8}>
                    what fails
                </text>
            )}
            {laid.columns.map((column, k) =>
                column.head.map((words, n) => (
                    <text
                        key={`${k} ${n}`}
                        class="soft"
                        x={column.x + column.width - 6}
                        y={laid.top - 8 - 15 * (column.head.length - 1 - n)}
                        text-anchor="end"
                    >
                        {cut(words, column.width - 6)}
                    </text>
                )),
            )}
            <line class="axis" x1={0} y1={laid.top - 1} x2={laid.width} y2={laid.top - 1} />
        </g>
    );
}

interface RowProps {
    line: MatrixLine;
    laid: MatrixLayout;
    y: number;
    /** Whether the Tab key stops here: once a picture. */
    stop: boolean;
    chosen: boolean;
    words: string;
    onCurrent: () => void;
    onChoose: () => void;
}

function Row({ line, laid, y, stop, chosen, words, onCurrent, onChoose }: RowProps) {
    const base = y + 17;
    const cellsY = y + laid.cellsAt;
    const cellHigh = laid.row - laid.cellsAt - 2;
    return (
        <g class={`bar-row${chosen ? ' picked' : ''}`} onClick={onChoose}>
            <g aria-hidden="true">
                {line.cells.map(({ value, standing }, k) => {
                    const column = laid.columns[k];
                    return (
                        column && (
                            <g key={k} class={`cell ${classOf(standing)}`}>
                                <rect
                                    class="wash"
                                    x={column.x + 2}
                                    y={cellsY + 1}
                                    width={column.width - 4}
                                    height={cellHigh}
                                />
                                {laid.hatched && standing !== 'told' && standing !== 'holds' && (
                                    <HatchedStrip
                                        kind={standing === 'short' ? 'taken' : 'added'}
                                        x={column.x + 2}
                                        y={cellsY + 1}
                                        width={STRIP}
                                        height={cellHigh}
                                    />
                                )}
                                <StandingMark
                                    standing={standing}
                                    x={column.x + (laid.hatched ? STRIP + 5 : 5)}
                                    y={cellsY + 7}
                                />
                                <text
                                    x={column.x + column.width - 6}
                                    y={base + laid.cellsAt}
                                    text-anchor="end"
                                    {...exact(value)}
                                >
                                    {cut(cellWords(value), column.width - laid.marks)}
                                </text>
                            </g>
                        )
                    );
                })}
                <text class={chosen ? 'strong' : ''} x={4} y={base}>
                    {cut(lineName(line), laid.names - 10)}
                </text>
                <line class="hair" x1={0} y1={y + laid.row} x2={laid.width} y2={y + laid.row} />
            </g>
            <rect
                class="row-ground above"
                x={0}
                y={y + 1}
                width={laid.width}
                height={laid.row - 1}
                role="button"
                tabindex={stop ? 0 : -1}
                aria-label={words}
                aria-pressed={chosen}
                onFocus={onCurrent}
                onKeyDown={event => {
                    onRowKey(event, onChoose);
                }}
            />
        </g>
    );
}

/** Arrow keys, Home and End go from row to row; Enter and the space bar choose. */
function onRowKey(event: KeyboardEvent, choose: () => void): void {
    const here = event.currentTarget as Element;
    const all = Array.from(
        here.parentElement?.parentElement?.querySelectorAll('.row-ground') ?? [],
    );
    const at = all.indexOf(here);
    const next = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: all.length - 1 }[event.key];
    const to = next === undefined ? undefined : all[next];
    if (event.key === 'Enter' || event.key === ' ') {
        event.preventDefault();
        choose();
    } else if (to instanceof SVGElement) {
        event.preventDefault();
        to.focus();
    }
}

function classOf(standing: Standing): string {
    return standing === 'cannot be told' ? 'untold' : standing;
}
