import { DISK, fanMatrix, LEFT_HAND, RIGHT_HAND, RIM, transform } from '../core/fanShape';
import type { Label } from '../core/labels';
import { CENTRE_HALF, FOOT, headOn, PACK_HALF, PART_HALF, type RigLabels } from '../core/rigLabels';
import { arrowM, share, thickM, type DrawnFan, type DrawnLine, type Scene } from '../core/scene';
import { dot, plus, type Point } from '../core/space';
import { x, y, type Laid } from '../core/view';
import { Hatches } from './Hatches';
import { Leaders } from './Leaders';

const HEAD = 7;

interface DrawnProps {
    id: string;
    scene: Scene;
    laid: Laid;
    labels: RigLabels;
}

/** Everything of a view that answers to no hand: from far to near. */
export function RigDrawn({ id, scene, laid, labels }: DrawnProps) {
    const near = (p: Point): number => dot(p, laid.view.near);
    const limbs = [...scene.limbs].sort((a, b) => near(a.from) - near(b.from));
    const fans = [...scene.fans].sort((a, b) => near(a.at) - near(b.at));
    const arrow = arrowM(scene);
    return (
        <g aria-hidden="true">
            <Hatches id={id} />
            {limbs.map(limb => (
                <line
                    key={limb.name}
                    class="limb"
                    x1={x(laid, limb.from)}
                    y1={y(laid, limb.from)}
                    x2={x(laid, limb.to)}
                    y2={y(laid, limb.to)}
                    stroke-width={thickM(limb.name) * laid.scale}
                />
            ))}
            {scene.parts.map(part => (
                <PartMark
                    key={part.id}
                    id={id}
                    kind={part.kind}
                    cx={x(laid, part.at)}
                    cy={y(laid, part.at)}
                />
            ))}
            {fans.map(fan => (
                <FanMark key={fan.id} fan={fan} laid={laid} />
            ))}
            {fans.map(fan => (
                <Arrow key={fan.id} fan={fan} laid={laid} far={arrow * share(scene, fan)} />
            ))}
            {scene.lift && <LiftLine lift={scene.lift} laid={laid} />}
            {scene.centre && <Centre cx={x(laid, scene.centre)} cy={y(laid, scene.centre)} />}
            <Leaders labels={[...labels.names, ...(labels.chosen ? [labels.chosen] : [])]} />
            {labels.numbers.map((label, k) => (
                <Words key={k} label={label} kind="fanname" />
            ))}
            {labels.names.map((label, k) => (
                <Words key={k} label={label} kind="name" />
            ))}
            {labels.chosen && <Words label={labels.chosen} kind="chosen-name" />}
        </g>
    );
}

function Words({ label, kind }: { label: Label; kind: string }) {
    return (
        <text class={`placed ${kind}`} x={label.x} y={label.y} text-anchor="middle">
            {label.words}
        </text>
    );
}

interface PartProps {
    id: string;
    kind: 'pack' | 'part' | 'mount';
    cx: number;
    cy: number;
}

/** A pack is a hatched square, another part a small one, a mount a square on its corner. */
export function PartMark({ id, kind, cx, cy }: PartProps) {
    const half = kind === 'pack' ? PACK_HALF : PART_HALF;
    switch (kind) {
        case 'mount':
            return (
                <path
                    class="mount"
                    d={`M${cx} ${cy - 6} L${cx + 6} ${cy} L${cx} ${cy + 6} L${cx - 6} ${cy} Z`}
                />
            );
        case 'pack':
        case 'part':
            return (
                <>
                    <rect
                        class={kind === 'pack' ? 'ground' : 'other'}
                        x={cx - half}
                        y={cy - half}
                        width={2 * half}
                        height={2 * half}
                    />
                    {kind === 'pack' && (
                        <rect
                            class="pack"
                            x={cx - half}
                            y={cy - half}
                            width={2 * half}
                            height={2 * half}
                            fill={`url(#${id}-pack)`}
                        />
                    )}
                </>
            );
    }
}

export function FanMark({ fan, laid }: { fan: DrawnFan; laid: Laid }) {
    const { at, push, tipM, rightHand } = fan;
    return (
        <g transform={transform(fanMatrix(laid, at, push, tipM))} data-fan={fan.id}>
            <path class="disk" d={DISK} />
            <path class="rim" d={RIM} />
            <path class="teeth" d={rightHand ? RIGHT_HAND : LEFT_HAND} />
        </g>
    );
}

function Arrow({ fan, laid, far }: { fan: DrawnFan; laid: Laid; far: number }) {
    const tip = plus(fan.at, fan.push, far);
    const [x1, y1] = [x(laid, fan.at), y(laid, fan.at)];
    const [x2, y2] = [x(laid, tip), y(laid, tip)];
    const long = Math.hypot(x2 - x1, y2 - y1);
    if (headOn(laid, fan.push) || long < 4) {
        return <circle class="tip" cx={x1} cy={y1} r={1.6} />; // straight at the eye
    }
    const [ux, uy] = [(x2 - x1) / long, (y2 - y1) / long];
    const head = Math.min(HEAD, long);
    const [bx, by] = [x2 - head * ux, y2 - head * uy];
    const side = 0.42 * head;
    return (
        <>
            <line class="thrust" x1={x1} y1={y1} x2={bx} y2={by} />
            <path
                class="tip"
                d={`M${f(x2)} ${f(y2)} L${f(bx - side * uy)} ${f(by + side * ux)} L${f(bx + side * uy)} ${f(by - side * ux)} Z`}
            />
        </>
    );
}

/** A coordinate: a tenth of a unit is finer than any eye. */
function f(value: number): string {
    return value.toFixed(1);
}

/** Across the whole picture, as far as it lies in it; a ring where it meets the eye. */
function LiftLine({ lift, laid }: { lift: DrawnLine; laid: Laid }) {
    const ux = dot(lift.along, laid.view.across);
    const uy = -dot(lift.along, laid.view.upward);
    const [cx, cy] = [x(laid, lift.at), y(laid, lift.at)];
    if (Math.hypot(ux, uy) < 0.05) {
        return <circle class="liftline" cx={cx} cy={cy} r={9} />;
    }
    let from = -1e9;
    let to = 1e9;
    for (const [at, along, low, high] of [
        [cx, ux, 4, laid.width - 4],
        [cy, uy, 4, laid.height - FOOT - 4],
    ] as const) {
        if (Math.abs(along) > 1e-9) {
            const [a, b] = [(low - at) / along, (high - at) / along];
            from = Math.max(from, Math.min(a, b));
            to = Math.min(to, Math.max(a, b));
        }
    }
    return from < to ? (
        <line
            class="liftline"
            x1={cx + from * ux}
            y1={cy + from * uy}
            x2={cx + to * ux}
            y2={cy + to * uy}
        />
    ) : null;
}

/** The trade's sign: a circle in quarters, two of them filled. */
function Centre({ cx, cy }: { cx: number; cy: number }) {
    const r = CENTRE_HALF;
    return (
        <>
            <circle class="centre" cx={cx} cy={cy} r={r} />
            <path
                class="quarter"
                d={`M${cx} ${cy} V${cy - r} A${r} ${r} 0 0 1 ${cx + r} ${cy} Z M${cx} ${cy} V${cy + r} A${r} ${r} 0 0 1 ${cx - r} ${cy} Z`}
            />
        </>
    );
}
