/**
 * A hatched strip as lines of its own. A sheet with hundreds of boxes that are filled with a pattern is
 * printed to a file of megabytes.
 */
export function HatchedStrip(props: {
    kind: 'taken' | 'added';
    x: number;
    y: number;
    width: number;
    height: number;
}) {
    const { kind, x, y, width, height } = props;
    const steps = (step: number, least: number): number[] =>
        Array.from({ length: Math.floor((height - least) / step) + 1 }, (_, k) => least + k * step);
    return kind === 'taken' ? (
        <path
            class="hatchline"
            d={steps(6, width)
                .map(down => `M${x} ${y + down} l${width} ${-width}`)
                .join(' ')}
        />
    ) : (
        <path
            class="hatchdots"
            d={steps(5, 2.5)
                .map(down => `M${x + width / 2} ${y + down} h0`)
                .join(' ')}
        />
    );
}

/** Hatches of one picture, by an id of its own, so that it can be saved alone and rests on no colour. */
export function Hatches({ id }: { id: string }) {
    return (
        <defs>
            <pattern id={`${id}-taken`} width="6" height="6" patternUnits="userSpaceOnUse">
                <path d="M-1 7 L7 -1 M-1 1 L1 -1 M5 7 L7 5" class="hatchline" />
            </pattern>
            <pattern id={`${id}-added`} width="5" height="5" patternUnits="userSpaceOnUse">
                <circle cx="2.5" cy="2.5" r="1.2" class="hatchdot" />
            </pattern>
            <pattern id={`${id}-pack`} width="6" height="6" patternUnits="userSpaceOnUse">
                <path d="M0 3 L6 3" class="hatchline" />
            </pattern>
            <pattern id={`${id}-zone`} width="10" height="10" patternUnits="userSpaceOnUse">
                <path d="M-1 1 L1 -1 M-1 11 L11 -1 M9 11 L11 9" class="zoneline" />
            </pattern>
        </defs>
    );
}
