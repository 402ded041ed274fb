import { useMemo } from 'preact/hooks';
import { thickM, type Scene } from '../core/scene';
import { dot } from '../core/space';
import { x, y, type Laid } from '../core/view';

/** The wearer, farther limbs first. */
export function Limbs({ scene, laid }: { scene: Scene; laid: Laid }) {
    return useMemo(
        () => (
            <>
                {[...scene.limbs]
                    .sort((a, b) => dot(a.from, laid.view.near) - dot(b.from, laid.view.near))
                    .map(limb => (
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
            </>
        ),
        [scene, laid],
    );
}
