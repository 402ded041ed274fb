import { numeral, roundBelow } from '../core/axis';
import { widthOf } from '../core/labels';
import { FOOT } from '../core/rigLabels';
import type { Laid } from '../core/view';
import type { PictureProps } from './api';

const LONGEST = 90;

/** Which way the edges are, and how long a stretch is, in the reader's units. */
export function RigEdges({ laid, fields }: { laid: Laid; fields: PictureProps['fields'] }) {
    const { view, width, height, scale } = laid;
    const base = height - 7;
    const { unit, per } = fields['place-right'] ?? { unit: 'm', per: 1 };
    const round = roundBelow((LONGEST / scale) * per);
    const wide = (round / per) * scale;
    const words = `${numeral(round, round)} ${unit}`;
    const from = (width - wide - 6 - widthOf(words)) / 2;
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
            <path
                class="axis"
                d={`M${from} ${base - 8} V${base} M${from} ${base - 4} H${from + wide} M${from + wide} ${base - 8} V${base}`}
            />
            <text class="soft" x={from + wide + 6} y={base}>
                {words}
            </text>
        </g>
    );
}
