import { useCallback, useId, useMemo, useRef, useState } from 'preact/hooks';
import { bareName, drawnName, drawnParts } from '../core/mounts';
import { numbersOf } from '../core/numbers';
import { factsOf, nameOf, namedParts, whyNot, type Named } from '../core/partWords';
import { FOOT } from '../core/rigLabels';
import { corners, sceneOf } from '../core/scene';
import { arranged, lay, VIEWS, type Laid, type ViewName } from '../core/view';
import type { RigProps } from './api';
import { settled, STEP_M, useHand } from './dragging';
import { Frame } from './Frame';
import { RigView } from './RigView';
import { useWidth } from './useWidth';

const SHEET = { margin: 26, foot: FOOT, leastHeight: 170, mostHeight: 560 };
const NONE: readonly string[] = [];

/** The rig from behind (or in front), from its right side and from above, all to one scale. */
export function RigViews(props: RigProps) {
    const { drawing, fields, fileName, stale } = props;
    const parts = useMemo(() => drawnParts(props.parts), [props.parts]);
    const named = (part: string): string => drawnName(props.parts, part);
    const selected = props.selected === undefined ? undefined : named(props.selected);
    const marked = useMemo(
        () => (props.marked ?? NONE).map(part => drawnName(props.parts, part)),
        [props.marked, props.parts],
    );
    const hint = useId();
    const scene = useMemo(() => sceneOf(drawing), [drawing]);
    const tables = useCallback(() => numbersOf(drawing, fields), [drawing, fields]);
    const names = useStable(namedParts(scene));
    const [facing, setFacing] = useState(false);
    const [snap, setSnap] = useState(true);
    const [twin, setTwin] = useState(true);
    const [whole, setWhole] = useState(false);
    const [current, setCurrent] = useState<string>();
    const stepM = props.stepM ?? STEP_M[props.units];
    const { ghost: held, grip } = useHand(scene, parts, { stepM, snap, twin, whole }, props.onDrag);
    const ghost = useMemo(() => settled(held, props.moved), [held, props.moved]);

    const [alone, setAlone] = useState<ViewName>();
    const views = useMemo(() => {
        const all = [facing ? VIEWS.front : VIEWS.behind, VIEWS.side, VIEWS.above];
        const one = all.filter(view => view.name === alone);
        return one.length > 0 ? one : all;
    }, [facing, alone]);
    // While a part is dragged the page under it stays where it is.
    const kept = useRef<Laid[]>(undefined);
    const room = useRef<HTMLDivElement>(null);
    const { columns, width } = arranged(useWidth(room), views.length);
    const fitted = useMemo(
        () => lay(views, corners(scene), { ...SHEET, width }),
        [views, scene, width],
    );
    const last = kept.current;
    const stands = last?.[0]?.view === views[0] && last?.[0]?.width === width;
    const laid = ghost && last && stands ? last : fitted;
    kept.current = laid;

    const movable = useMemo(() => {
        const all = new Set(parts.filter(part => part.movable).map(part => part.id));
        return (part: string) => all.has(part);
    }, [parts]);
    const told = current ?? selected;
    const show = useStableCall(part => {
        props.onShow(bareName(part));
    });
    const chooser = useMemo(
        () => (
            <label>
                part
                <select
                    value={told ?? ''}
                    onChange={event => {
                        const part = event.currentTarget.value;
                        setCurrent(part || undefined);
                        if (part) {
                            show(part);
                        }
                    }}
                >
                    <option value="">none</option>
                    {names.map(named => (
                        <option key={named.id} value={named.id}>
                            {bareName(named.id)}, {named.what}
                        </option>
                    ))}
                </select>
            </label>
        ),
        [names, told, show],
    );
    const someMovable = names.some(named => movable(named.id));
    return (
        <Frame
            title={drawing.title}
            fileName={fileName}
            kind="rig"
            tables={tables}
            stale={stale}
            selected={selected}
            onShow={show}
        >
            <div class="rig-tools">
                <button
                    type="button"
                    aria-pressed={facing}
                    onClick={() => {
                        setFacing(!facing);
                    }}
                >
                    face the wearer
                </button>
                {someMovable && (
                    <>
                        <label>
                            <input
                                type="checkbox"
                                checked={snap}
                                onChange={event => {
                                    setSnap(event.currentTarget.checked);
                                }}
                            />
                            snap
                        </label>
                        <label>
                            <input
                                type="checkbox"
                                checked={twin}
                                onChange={event => {
                                    setTwin(event.currentTarget.checked);
                                }}
                            />
                            twin goes along
                        </label>
                        <label>
                            <input
                                type="checkbox"
                                checked={whole}
                                onChange={event => {
                                    setWhole(event.currentTarget.checked);
                                }}
                            />
                            whole group
                        </label>
                    </>
                )}
                {chooser}
            </div>
            <div ref={room} class={`views columns-${columns}`}>
                {laid.map(each => (
                    <div key={each.view.name} class="one-view">
                        <p class="view-words">
                            seen {each.view.words}{' '}
                            <button
                                type="button"
                                aria-pressed={alone !== undefined}
                                aria-label={`${each.view.words}: larger, alone`}
                                onClick={() => {
                                    setAlone(alone === undefined ? each.view.name : undefined);
                                }}
                            >
                                larger
                            </button>
                        </p>
                        <RigView
                            title={drawing.title}
                            scene={scene}
                            laid={each}
                            fields={fields}
                            current={told}
                            selected={selected}
                            marked={marked}
                            ghost={ghost}
                            grip={grip}
                            hint={hint}
                            movable={movable}
                            onCurrent={setCurrent}
                            onShow={show}
                        />
                    </div>
                ))}
            </div>
            <p id={hint} class="hint">
                {someMovable
                    ? 'Drag a part, or move it with the arrow keys (Shift: ten steps; Alt: a fine step; while dragging, Alt leaves snapping off). Enter keeps it, Escape puts it back. '
                    : ''}
                Page Up and Page Down go from part to part; Enter shows it in the file.
            </p>
            <Telling {...props} parts={parts} current={told} scene={scene} dragged={ghost?.part} />
        </Frame>
    );
}

/** The same parts as before, unless one has come, gone or changed: a drag changes none. */
function useStable(names: Named[]): Named[] {
    const last = useRef(names);
    const same =
        last.current.length === names.length &&
        last.current.every((each, k) => each.id === names[k]?.id && each.what === names[k].what);
    if (!same) {
        last.current = names;
    }
    return last.current;
}

/** One function for ever that calls the newest. */
function useStableCall(call: (part: string) => void): (part: string) => void {
    const newest = useRef(call);
    newest.current = call;
    return useCallback((part: string) => {
        newest.current(part);
    }, []);
}

interface TellingProps extends RigProps {
    scene: ReturnType<typeof sceneOf>;
    current: string | undefined;
    dragged: string | undefined;
}

/** What is known of the part that is looked at; while one is dragged, what the answer says. */
function Telling({ scene, current, dragged, ...props }: TellingProps) {
    const { drawing, about, fields, parts } = props;
    const facts = useMemo(
        () =>
            current === undefined || dragged !== undefined
                ? []
                : factsOf(current, [drawing, ...(about ?? [])], fields),
        [current, dragged, drawing, about, fields],
    );
    const named = namedParts(scene).find(each => each.id === current);
    const fixed = named && parts.length > 0 ? whyNot(parts, named.id) : undefined;
    return (
        <div class="telling">
            <div aria-live="polite" class="picture-told">
                {dragged !== undefined && (
                    <>
                        <p>
                            {[bareName(dragged), props.moved?.sentence].filter(Boolean).join(': ')}
                        </p>
                        {props.told?.map((line, k) => (
                            <p key={k}>{line}</p>
                        ))}
                    </>
                )}
            </div>
            {named && dragged === undefined && (
                <>
                    <p class="part-words">{nameOf(scene, named)}</p>
                    {fixed && <p class="picture-key">{fixed}</p>}
                    <dl class="facts">
                        {facts.map(fact => (
                            <div key={fact.label}>
                                <dt>{fact.label}</dt>
                                <dd>{fact.words}</dd>
                            </div>
                        ))}
                    </dl>
                </>
            )}
            <p class="picture-key">{KEY}</p>
        </div>
    );
}

const KEY =
    'A circle is a fan at its rotor’s size, its rim hatched the way it turns: R right-hand, L left-hand, ' +
    'as seen along its thrust. Arrows: thrust. Hatched squares: packs; small ones: other parts. ' +
    'Quartered circle: centre of mass. Dash-dotted: the line along which the lift acts.';
