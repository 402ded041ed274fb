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
