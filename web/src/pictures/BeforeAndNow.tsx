import { useId, useMemo, useRef, useState } from 'preact/hooks';
import { CENTRE, movedWords, shiftShort, shiftsOf, shiftWords, type Shift } from '../core/before';
import { DISK, fanMatrix, transform } from '../core/fanShape';
import { FOOT, rigLabels } from '../core/rigLabels';
import { corners, sceneOf, type Scene } from '../core/scene';
import { arranged, lay, VIEWS, x, y, type Laid } from '../core/view';
import type { AnswerDocument, Drawing } from '../core/wire';
import { InSpace } from './InSpace';
import { RigDrawn } from './RigDrawn';
import { RigEdges } from './RigEdges';
import { useWidth } from './useWidth';

const SHEET = { margin: 26, foot: FOOT, leastHeight: 170, mostHeight: 560 };
const SIDES = [VIEWS.behind, VIEWS.side, VIEWS.above];
const TITLE = 'The rig, and as it was before';
/** So many stand in the list before all are asked for. */
const LISTED = 8;

interface BeforeProps {
    before: Drawing;
    now: Drawing;
    fields: AnswerDocument['fields'];
    /** A part that was chosen, by what the file calls it. */
    onShow: (part: string) => void;
}

/** The rig now; what stands elsewhere as an outline where it stood, with how far; and the same in space. */
export function BeforeAndNow({ before, now, fields, onShow }: BeforeProps) {
    const was = useMemo(() => sceneOf(before), [before]);
    const is = useMemo(() => sceneOf(now), [now]);
    const shifts = useMemo(() => shiftsOf(was, is), [was, is]);
    const [chosen, setChosen] = useState<string>();
    const room = useRef<HTMLDivElement>(null);
    const { columns, width } = arranged(useWidth(room), SIDES.length);
    const laid = useMemo(
        () => lay(SIDES, [...corners(was), ...corners(is)], { ...SHEET, width }),
        [was, is, width],
    );
    const choose = (id: string): void => {
        setChosen(id);
        if (id !== CENTRE) onShow(id);
    };
    const caption = useId();
    return (
        <figure class="picture rig before-now" aria-labelledby={caption}>
            <figcaption id={caption}>{TITLE}</figcaption>
            <div ref={room} class={`views columns-${columns}`}>
                {laid.map(each => (
                    <div key={each.view.name} class="one-view">
                        <p class="view-words">seen {each.view.words}</p>
                        <svg
                            class="drawn view"
                            viewBox={`0 0 ${each.width} ${each.height}`}
                            role="img"
                            aria-label={`The rig and its outline before, seen ${each.view.words}: ${movedWords(was, is)}`}
                        >
                            <Now scene={is} laid={each} />
                            <Outlines shifts={shifts} chosen={chosen} laid={each} />
                            <RigEdges laid={each} fields={fields} />
                        </svg>
                    </div>
                ))}
            </div>
            <p class="picture-key">
                {shifts.length === 0
                    ? 'Nothing stands elsewhere than before.'
                    : 'Solid: now. Dashed: where what stands elsewhere stood before, with the way from there.'}
            </p>
            <Shifts shifts={shifts} fields={fields} chosen={chosen} onChoose={choose} />
            <InSpace
                title={TITLE}
                load={() => import('./solid/BeforeSpace')}
                props={{
                    words: `${TITLE}: ${movedWords(was, is)}`,
                    scene: is,
                    was,
                    shifts,
                    short: (shift: Shift) => shiftShort(shift, fields),
                    chosen,
                    onChoose: choose,
                }}
            />
        </figure>
    );
}

interface ShiftsProps {
    shifts: readonly Shift[];
    fields: AnswerDocument['fields'];
    chosen: string | undefined;
    onChoose: (id: string) => void;
}

/** What stands elsewhere and how far, the farthest first; choosing one shows it in the pictures. */
function Shifts({ shifts, fields, chosen, onChoose }: ShiftsProps) {
    const [all, setAll] = useState(false);
    const at = shifts.findIndex(shift => shift.id === chosen);
    const shown = all || at >= LISTED ? shifts : shifts.slice(0, LISTED);
    return (
        <>
            <ol class="ahead shifts" aria-label="what stands elsewhere than before">
                {shown.map(shift => (
                    <li key={`${shift.kind} ${shift.id}`}>
                        <button
                            type="button"
                            class="part-name"
                            aria-pressed={shift.id === chosen}
                            onClick={() => {
                                onChoose(shift.id);
                            }}
                        >
                            {shift.id}
                        </button>
                        <span class="reading" data-m={String(shift.farM)}>
                            {shiftWords(shift, fields)}
                        </span>
                    </li>
                ))}
            </ol>
            {shown.length < shifts.length && (
                <button
                    type="button"
                    class="small"
                    onClick={() => {
                        setAll(true);
                    }}
                >
                    all {shifts.length} that stand elsewhere
                </button>
            )}
        </>
    );
}

function Now({ scene, laid }: { scene: Scene; laid: Laid }) {
    const id = useId();
    const labels = useMemo(() => rigLabels(scene, laid, undefined), [scene, laid]);
    return <RigDrawn id={id} scene={scene} laid={laid} labels={labels} />;
}

const HALF = 6;

interface OutlinesProps {
    shifts: readonly Shift[];
    chosen: string | undefined;
    laid: Laid;
}

/** Fans as rings, all else as open squares; what came has a ring where it is. */
function Outlines({ shifts, chosen, laid }: OutlinesProps) {
    return (
        <g class="before" aria-hidden="true">
            {shifts.map(shift => {
                const { id, kind, from, to, fan } = shift;
                return (
                    <g key={`${kind} ${id}`} class={id === chosen ? 'picked' : undefined}>
                        {kind === 'moved' && (
                            <line
                                x1={x(laid, from)}
                                y1={y(laid, from)}
                                x2={x(laid, to)}
                                y2={y(laid, to)}
                            />
                        )}
                        {fan ? (
                            <path
                                d={DISK}
                                transform={transform(fanMatrix(laid, from, fan.push, fan.tipM))}
                            />
                        ) : (
                            <rect
                                x={x(laid, from) - HALF}
                                y={y(laid, from) - HALF}
                                width={2 * HALF}
                                height={2 * HALF}
                            />
                        )}
                    </g>
                );
            })}
        </g>
    );
}
