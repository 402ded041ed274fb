import { useMemo } from 'preact/hooks';
import { DISK, fanMatrix, halves } from '../core/fanShape';
import { survivors, type CaseMark } from '../core/faults';
import { Labels, type Box, type Label } from '../core/labels';
import { FOOT } from '../core/rigLabels';
import { corners, type Scene } from '../core/scene';
import type { Point } from '../core/space';
import { flattened } from '../core/svg';
import { x, y, type Laid } from '../core/view';
import { PlacedNames } from './Leaders';
import { Limbs } from './Limbs';

const HALF = 8;
const NAMED = 4;
/** Below all that is drawn a wearer's legs say nothing; m. */
const BELOW = 0.1;

/** The rig as far as its parts reach. */
export function caseScene(scene: Scene, marks: readonly CaseMark[]): Scene {
    const lowest = Math.min(...marks.map(mark => mark.at.up));
    return {
        ...scene,
        limbs: scene.limbs.filter(limb => Math.min(limb.from.up, limb.to.up) > lowest - BELOW),
        centre: undefined,
        lift: undefined,
    };
}

/** Points that must be seen. */
export function caseCorners(scene: Scene, marks: readonly CaseMark[]): Point[] {
    const drawn = scene.fans.length + scene.limbs.length > 0;
    return [...(drawn ? corners({ ...scene, parts: [] }) : []), ...marks.map(mark => mark.at)];
}

interface CaseRigProps {
    id: string;
    marks: readonly CaseMark[];
    scene: Scene;
    laid: Laid;
    /** A value in words. */
    tell: (si: number) => string;
    selected: string | undefined;
    onShow: (part: string) => void;
}

interface Shape {
    readonly mark: CaseMark;
    /** The outline, and that of a disk of a share of its area; none of what is no fan. */
    readonly disk: ((share: number) => string) | undefined;
    readonly box: Box;
}

/** Fans and packs where they are: what is lost is crossed, what is left filled by its share. */
export function CaseRig({ id, marks, scene, laid, tell, selected, onShow }: CaseRigProps) {
    const shapes = useMemo(
        () => marks.map(mark => shapeOf(mark, scene, laid)),
        [marks, scene, laid],
    );
    const most = Math.max(1, ...marks.map(mark => mark.value));
    const labels = labelsOf(shapes, laid, tell);
    return (
        <g aria-hidden="true">
            <defs>
                <pattern id={`${id}-left`} width="5" height="5" patternUnits="userSpaceOnUse">
                    <path d="M-1 6 L6 -1 M-1 1 L1 -1 M4 6 L6 4" class="hatchline" />
                </pattern>
            </defs>
            <Limbs scene={scene} laid={laid} />
            {shapes.map(({ mark, disk, box }) => (
                <g
                    key={`${mark.part} ${mark.kind}`}
                    class={mark.lost ? 'played lost' : 'played'}
                    data-part={mark.part}
                    data-lost={mark.lost}
                    onClick={() => {
                        onShow(mark.part);
                    }}
                >
                    {disk ? (
                        <>
                            <path class="hull" d={disk(1)} />
                            {!mark.lost && mark.value > 0 && (
                                <path
                                    class="filled"
                                    fill={`url(#${id}-left)`}
                                    d={disk(Math.min(1, mark.value / most))}
                                />
                            )}
                        </>
                    ) : (
                        <rect
                            class="hull"
                            x={box.left}
                            y={box.top}
                            width={box.right - box.left}
                            height={box.bottom - box.top}
                        />
                    )}
                    {mark.lost && <path class="lost-cross" d={crossed(box)} />}
                    {mark.part === selected && <path class="selected" d={rim(box)} />}
                </g>
            ))}
            <PlacedNames labels={labels} />
        </g>
    );
}

function shapeOf(mark: CaseMark, scene: Scene, laid: Laid): Shape {
    const fan = mark.kind === 'fan' ? scene.fans.find(each => each.id === mark.part) : undefined;
    if (!fan) {
        const [cx, cy] = [x(laid, mark.at), y(laid, mark.at)];
        const box = { left: cx - HALF, right: cx + HALF, top: cy - HALF, bottom: cy + HALF };
        return { mark, disk: undefined, box };
    }
    const [wide, high] = halves(fanMatrix(laid, fan.at, fan.push, fan.tipM));
    const [cx, cy] = [x(laid, fan.at), y(laid, fan.at)];
    return {
        mark,
        disk: share =>
            flattened(DISK, fanMatrix(laid, fan.at, fan.push, fan.tipM * Math.sqrt(share))),
        box: { left: cx - wide, right: cx + wide, top: cy - high, bottom: cy + high },
    };
}

function crossed({ left, right, top, bottom }: Box): string {
    const [half, cx, cy] = [
        Math.max(7, (right - left) / 2, (bottom - top) / 2),
        (left + right) / 2,
        (top + bottom) / 2,
    ];
    const n = (value: number): string => value.toFixed(1);
    return `M${n(cx - half)} ${n(cy - half)} l${n(2 * half)} ${n(2 * half)} M${n(cx - half)} ${n(cy + half)} l${n(2 * half)} ${n(-2 * half)}`;
}

function rim({ left, right, top, bottom }: Box): string {
    return `M${left - 4} ${top - 4} H${right + 4} V${bottom + 4} H${left - 4} Z`;
}

/** What is lost by name, and the greatest shares of what is left beside theirs. */
function labelsOf(shapes: readonly Shape[], laid: Laid, tell: (si: number) => string): Label[] {
    const labels = new Labels(laid.width, laid.height - FOOT);
    labels.reserve({ left: 0, top: 0, right: 90, bottom: 18 });
    shapes.forEach(shape => {
        labels.avoid(shape.box);
    });
    const lost = shapes.filter(shape => shape.mark.lost);
    const greatest = survivors(shapes.map(shape => shape.mark)).slice(0, NAMED);
    const found: Label[] = [];
    const name = (shape: Shape | undefined, words: string): void => {
        const label = shape && labels.beside(shape.box, words);
        if (label) {
            found.push(label);
        }
    };
    for (const shape of lost.slice(0, NAMED)) {
        name(shape, `${shape.mark.part} lost`);
    }
    for (const mark of greatest) {
        name(
            shapes.find(shape => shape.mark === mark),
            tell(mark.value),
        );
    }
    return found;
}
