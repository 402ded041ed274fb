import type { Standing } from '../core/wire';

const SIZE = 12;

/** How a number stands, as a shape like those of verdicts; never colour alone, and beside its word. */
export function StandingMark({ standing, x, y }: { standing: Standing; x: number; y: number }) {
    const at = `translate(${x.toFixed(1)} ${y.toFixed(1)})`;
    switch (standing) {
        case 'holds':
            return (
                <g class="standing holds" transform={at}>
                    <rect class="full" x={0.5} y={0.5} width={SIZE - 1} height={SIZE - 1} />
                    <path class="cut" d="M2.5 6.4 4.9 8.8 9.4 3.4" />
                </g>
            );
        case 'short':
            return (
                <g class="standing short" transform={at}>
                    <path class="full" d="M6 0 12 6 6 12 0 6Z" />
                    <path class="cut" d="M3.2 6H8.8" />
                </g>
            );
        case 'cannot be told':
            return (
                <g class="standing untold" transform={at}>
                    <circle class="rim" cx={6} cy={6} r={5.2} />
                    <path class="full" d="M6 0.8a5.2 5.2 0 0 1 0 10.4Z" />
                </g>
            );
        case 'told':
            return null;
    }
}

/** The same in a legend. */
export function StandingSwatch({ standing }: { standing: Standing }) {
    return (
        <svg class="swatch" viewBox="0 0 14 14" width="14" height="14" aria-hidden="true">
            <StandingMark standing={standing} x={1} y={1} />
        </svg>
    );
}
