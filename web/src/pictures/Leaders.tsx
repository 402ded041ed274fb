import type { Label } from '../core/labels';

/** Lines from names that stand apart to what they name. */
export function Leaders({ labels }: { labels: readonly Label[] }) {
    return (
        <>
            {labels.map(
                ({ leader }, k) =>
                    leader && (
                        <line
                            key={k}
                            class="leader"
                            x1={leader[0]}
                            y1={leader[1]}
                            x2={leader[2]}
                            y2={leader[3]}
                        />
                    ),
            )}
        </>
    );
}

/** Names where they were placed, with their lines below them. */
export function PlacedNames({ labels }: { labels: readonly Label[] }) {
    return (
        <>
            <Leaders labels={labels} />
            {labels.map((label, k) => (
                <text key={k} class="placed name" x={label.x} y={label.y} text-anchor="middle">
                    {label.words}
                </text>
            ))}
        </>
    );
}
