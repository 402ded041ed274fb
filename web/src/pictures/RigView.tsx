import { useId, useMemo, useRef } from 'preact/hooks';
import { DISK, fanMatrix, transform } from '../core/fanShape';
import { nameOf, namedParts, type Named } from '../core/partWords';
import { PACK_HALF, rigLabels } from '../core/rigLabels';
import { placeOf, type Scene } from '../core/scene';
import { dot, type Point } from '../core/space';
import { x, y, type Laid } from '../core/view';
import type { PictureProps } from './api';
import type { Ghost, Grip } from './dragging';
import { FanMark, PartMark, RigDrawn } from './RigDrawn';
import { RigEdges } from './RigEdges';

/** Less is a click. In pixels of the screen. */
const DRAG_FROM = 4;

interface ViewProps {
    title: string;
    scene: Scene;
    laid: Laid;
    fields: PictureProps['fields'];
    current: string | undefined;
    selected: string | undefined;
    marked: readonly string[];
    ghost: Ghost | undefined;
    grip: Grip;
    hint: string;
    movable: (part: string) => boolean;
    onCurrent: (part: string) => void;
    onShow: (part: string) => void;
}

/** The rig seen from one side; parts can be chosen, and dragged where the file places them. */
export function RigView(props: ViewProps) {
    const { title, scene, laid, fields, selected, marked, current, ghost } = props;
    const { grip, movable, onCurrent, onShow } = props;
    const id = useId();
    const svg = useRef<SVGSVGElement>(null);
    const labels = useMemo(() => rigLabels(scene, laid, selected), [scene, laid, selected]);
    const drawn = useMemo(
        () => <RigDrawn id={id} scene={scene} laid={laid} labels={labels} />,
        [id, scene, laid, labels],
    );
    const edges = useMemo(() => <RigEdges laid={laid} fields={fields} />, [laid, fields]);
    // What is held must keep its element: a pointer is captured by it.
    const order = useRef<readonly string[]>([]);
    const held = ghost !== undefined;
    const targets = useMemo(
        () => targetsOf(scene, laid, held ? order.current : []),
        [scene, laid, held],
    );
    order.current = targets.map(target => target.id);
    const seen = targets.some(each => each.id === current) ? current : targets[0]?.id;
    const hands = useMemo(
        () => (
            <g>
                {targets.map(target => (
                    <Target
                        key={target.id}
                        target={target}
                        stop={target.id === seen}
                        order={targets}
                        laid={laid}
                        grip={grip}
                        movable={movable(target.id)}
                        onCurrent={onCurrent}
                        onShow={onShow}
                    />
                ))}
            </g>
        ),
        [targets, seen, laid, grip, movable, onCurrent, onShow],
    );
    return (
        <svg
            ref={svg}
            class="drawn view"
            viewBox={`0 0 ${laid.width} ${laid.height}`}
            role="group"
            aria-label={`${title}, seen ${laid.view.words}`}
            aria-describedby={props.hint}
            data-title={`${title}, seen ${laid.view.words}`}
        >
            {drawn}
            {edges}
            {marked.map(part => (
                <Rim key={part} kind="marked" part={part} scene={scene} laid={laid} />
            ))}
            {selected !== undefined && (
                <Rim kind="selected" part={selected} scene={scene} laid={laid} />
            )}
            {hands}
            {ghost && <GhostMark ghost={ghost} id={id} scene={scene} laid={laid} />}
        </svg>
    );
}

interface TargetOf extends Named {
    readonly words: string;
    /** Where it is taken by; a circle of radius one for a fan. */
    readonly transform: string;
    readonly fan: boolean;
}

/** In an order that stands, or the far ones first, so that the near ones lie on top. */
function targetsOf(scene: Scene, laid: Laid, order: readonly string[]): TargetOf[] {
    const near = (id: string): number => {
        const at = placeOf(scene, id);
        return at ? dot(at, laid.view.near) : 0;
    };
    const all = namedParts(scene).map(named => {
        const fan = scene.fans.find(other => other.id === named.id);
        const at = placeOf(scene, named.id);
        return {
            ...named,
            words: nameOf(scene, named),
            fan: fan !== undefined,
            transform: fan
                ? transform(fanMatrix(laid, fan.at, fan.push, fan.tipM))
                : at
                  ? `translate(${x(laid, at).toFixed(1)} ${y(laid, at).toFixed(1)})`
                  : '',
        };
    });
    return all.sort((a, b) =>
        order.length > 0 ? order.indexOf(a.id) - order.indexOf(b.id) : near(a.id) - near(b.id),
    );
}

interface TargetProps extends Pick<ViewProps, 'laid' | 'grip' | 'onCurrent' | 'onShow'> {
    target: TargetOf;
    movable: boolean;
    /** Whether the Tab key stops here: once a view. */
    stop: boolean;
    order: readonly TargetOf[];
}

function Target({ target, stop, order, ...props }: TargetProps) {
    const { laid, grip, movable } = props;
    const start = useRef<{ x: number; y: number; scale: number; taken: boolean }>(undefined);

    const onPointerDown = (event: PointerEvent): void => {
        if (event.button !== 0) {
            return;
        }
        const element = event.currentTarget as SVGElement;
        const box = element.ownerSVGElement?.getBoundingClientRect();
        element.setPointerCapture(event.pointerId);
        start.current = {
            x: event.clientX,
            y: event.clientY,
            scale: box && box.width > 0 ? laid.width / box.width : 1,
            taken: false,
        };
        props.onCurrent(target.id);
    };
    const onPointerMove = (event: PointerEvent): void => {
        const from = start.current;
        if (!from) {
            return;
        }
        const [dx, dy] = [event.clientX - from.x, event.clientY - from.y];
        if (!from.taken && Math.hypot(dx, dy) >= DRAG_FROM) {
            from.taken = grip.take(target.id, 'pointer');
        }
        if (from.taken) {
            grip.pull(laid, dx * from.scale, dy * from.scale, event.altKey);
        }
    };
    const onPointerUp = (): void => {
        const from = start.current;
        start.current = undefined;
        if (from?.taken) {
            grip.drop();
        } else if (from) {
            props.onShow(target.id);
        }
    };
    const onLost = (): void => {
        if (start.current?.taken) {
            start.current = undefined;
            grip.cancel();
        }
    };
    const onKeyDown = (event: KeyboardEvent): void => {
        if (keyed(event, target, order, props)) {
            event.preventDefault();
            event.stopPropagation();
            if (event.key === 'Escape') {
                start.current = undefined; // the pointer may still be down
            }
        }
    };
    return (
        <g
            class={`hand hand-only${movable ? ' movable' : ''}`}
            role="button"
            tabindex={stop ? 0 : -1}
            aria-label={target.words}
            data-part={target.id}
            onPointerDown={onPointerDown}
            onPointerMove={onPointerMove}
            onPointerUp={onPointerUp}
            onPointerCancel={onLost}
            onLostPointerCapture={onLost}
            onKeyDown={onKeyDown}
            onFocus={() => {
                props.onCurrent(target.id);
            }}
            onBlur={() => {
                if (grip.holds(target.id) === 'keys') {
                    grip.cancel();
                }
            }}
        >
            {target.fan ? (
                <path class="take" d={DISK} transform={target.transform} />
            ) : (
                <rect
                    class="take"
                    x={-PACK_HALF}
                    y={-PACK_HALF}
                    width={2 * PACK_HALF}
                    height={2 * PACK_HALF}
                    transform={target.transform}
                />
            )}
        </g>
    );
}

/** What a key does to a part; false where it does nothing. */
function keyed(
    event: KeyboardEvent,
    target: TargetOf,
    order: readonly TargetOf[],
    { grip, laid, onShow }: Pick<TargetProps, 'grip' | 'laid' | 'onShow'>,
): boolean {
    const held = grip.holds(target.id) !== undefined;
    switch (event.key) {
        case 'Escape':
            if (held) {
                grip.cancel();
            }
            return held;
        case 'Enter':
        case ' ':
            if (held) {
                grip.drop();
            } else {
                onShow(target.id);
            }
            return true;
        case 'PageDown':
        case 'PageUp':
        case 'Home':
        case 'End':
            return walked(event, target, order);
        case 'ArrowLeft':
        case 'ArrowRight':
        case 'ArrowUp':
        case 'ArrowDown':
            if (event.ctrlKey || event.metaKey || (!held && !grip.take(target.id, 'keys'))) {
                return false;
            }
            return grip.step(laid.view, event.key, event.shiftKey ? 10 : 1, event.altKey);
        default:
            return false;
    }
}

/** To the part before or after, in the order of their names. */
function walked(event: KeyboardEvent, target: TargetOf, order: readonly TargetOf[]): boolean {
    const names = order.map(each => each.id).sort(byName);
    const at = names.indexOf(target.id);
    const last = names.length - 1;
    const to = {
        PageDown: Math.min(last, at + 1),
        PageUp: Math.max(0, at - 1),
        Home: 0,
        End: last,
    };
    const name = names[to[event.key as keyof typeof to]];
    const all = (event.currentTarget as Element).parentElement?.children ?? [];
    for (const element of Array.from(all)) {
        if (element instanceof SVGElement && element.dataset['part'] === name) {
            element.focus();
        }
    }
    return true;
}

function byName(a: string, b: string): number {
    return a.localeCompare(b, 'en', { numeric: true });
}

interface RimProps {
    kind: 'marked' | 'selected';
    part: string;
    scene: Scene;
    laid: Laid;
}

/** A second rim about a part; what a finding names has a broken one. */
function Rim({ kind, part, scene, laid }: RimProps) {
    const fan = scene.fans.find(other => other.id === part);
    const at = placeOf(scene, part);
    if (!at) {
        return null;
    }
    return fan ? (
        <path
            class={kind}
            d={DISK}
            transform={transform(fanMatrix(laid, fan.at, fan.push, fan.tipM * 1.22))}
        />
    ) : (
        <circle class={kind} cx={x(laid, at)} cy={y(laid, at)} r={PACK_HALF + 6} />
    );
}

interface GhostProps {
    ghost: Ghost;
    id: string;
    scene: Scene;
    laid: Laid;
}

/** Where a part comes to stand, and its twin with it. */
function GhostMark({ ghost, id, scene, laid }: GhostProps) {
    const one = (part: string, from: Point, to: Point) => {
        const fan = scene.fans.find(other => other.id === part);
        const kind = scene.parts.find(other => other.id === part)?.kind ?? 'part';
        return (
            <>
                <line
                    class="way"
                    x1={x(laid, from)}
                    y1={y(laid, from)}
                    x2={x(laid, to)}
                    y2={y(laid, to)}
                />
                {fan ? (
                    <FanMark fan={{ ...fan, at: to }} laid={laid} />
                ) : (
                    <PartMark id={id} kind={kind} cx={x(laid, to)} cy={y(laid, to)} />
                )}
            </>
        );
    };
    const { part, from, stand, twin, twinFrom, twinTo } = ghost;
    return (
        <g class="ghost hand-only" aria-hidden="true">
            {one(part, from, stand)}
            {twin !== undefined && twinFrom && twinTo && one(twin, twinFrom, twinTo)}
        </g>
    );
}
