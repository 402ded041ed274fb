import { FOOT, scaleBar } from '../core/rigLabels';
import type { Laid } from '../core/view';
import type { PictureProps } from './api';

/** Which way the edges are, and how long a stretch is, in the reader's units. */
export function RigEdges({ laid, fields }: { laid: Laid; fields: PictureProps['fields'] }) {
    const { view, width, height } = laid;
    const base = height - 7;
    const { unit, per } = fields['place-right'] ?? { unit: 'm', per: 1 };
    const bar = scaleBar(laid, unit, per);
    return (
        <g aria-hidden="true">
            <line class="hair" x1={0} y1={height - FOOT + 1} x2={width} y2={height - FOOT + 1} />
            <text class="soft" x={0} y={base}>
                ← {view.left}
            </text>
            <text class="soft" x={width} y={base} text-anchor="end">
                {view.right} →
            </text>
            <text class="soft" x={0} y={13}>
                ↑ {view.top}
            </text>
            {bar && (
                <>
                    <path
                        class="axis"
                        d={`M${bar.from} ${base - 8} V${base} M${bar.from} ${base - 4} h${bar.wide} M${bar.from + bar.wide} ${base - 8} V${base}`}
                    />
                    <text class="soft" x={bar.from + bar.wide + 6} y={base}>
                        {bar.words}
                    </text>
                </>
            )}
        </g>
    );
}
