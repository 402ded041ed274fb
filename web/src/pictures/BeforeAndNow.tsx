import { useId, useMemo, useRef } from 'preact/hooks';
import { movedWords } from '../core/before';
import { DISK, fanMatrix, transform } from '../core/fanShape';
import { FOOT, rigLabels } from '../core/rigLabels';
import { corners, sceneOf, type Scene } from '../core/scene';
import { arranged, lay, VIEWS, x, y, type Laid } from '../core/view';
import type { Drawing } from '../core/wire';
import { RigDrawn } from './RigDrawn';
import { useWidth } from './useWidth';

const SHEET = { margin: 26, foot: FOOT, leastHeight: 170, mostHeight: 560 };
const SIDES = [VIEWS.behind, VIEWS.side, VIEWS.above];

/** The rig now, and as an outline over it the rig before: fans as rings, all else as open squares. */
export function BeforeAndNow({ before, now }: { before: Drawing; now: Drawing }) {
    const was = useMemo(() => sceneOf(before), [before]);
    const is = useMemo(() => sceneOf(now), [now]);
    const room = useRef<HTMLDivElement>(null);
    const { columns, width } = arranged(useWidth(room), SIDES.length);
    const laid = useMemo(
        () => lay(SIDES, [...corners(was), ...corners(is)], { ...SHEET, width }),
        [was, is, width],
    );
    const caption = useId();
    return (
        <figure class="picture rig" aria-labelledby={caption}>
            <figcaption id={caption}>The rig, and as it was before</figcaption>
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
                            <Outline scene={was} laid={each} />
                        </svg>
                    </div>
                ))}
            </div>
            <p class="picture-key">Solid: now. Dashed outline: before. {movedWords(was, is)}.</p>
        </figure>
    );
}

function Now({ scene, laid }: { scene: Scene; laid: Laid }) {
    const id = useId();
    const labels = useMemo(() => rigLabels(scene, laid, undefined), [scene, laid]);
    return <RigDrawn id={id} scene={scene} laid={laid} labels={labels} />;
}

const HALF = 6;

function Outline({ scene, laid }: { scene: Scene; laid: Laid }) {
    return (
        <g class="before" aria-hidden="true">
            {scene.fans.map(fan => (
                <path
                    key={fan.id}
                    d={DISK}
                    transform={transform(fanMatrix(laid, fan.at, fan.push, fan.tipM))}
                />
            ))}
            {scene.parts.map(part => (
                <rect
                    key={part.id}
                    x={x(laid, part.at) - HALF}
                    y={y(laid, part.at) - HALF}
                    width={2 * HALF}
                    height={2 * HALF}
                />
            ))}
            {scene.centre && (
                <circle cx={x(laid, scene.centre)} cy={y(laid, scene.centre)} r={HALF} />
            )}
        </g>
    );
}
