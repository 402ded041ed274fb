import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';

/** Something that is opened when it is wanted, and not drawn before. */
export function Fold({ title, children }: { title: string; children: () => ComponentChildren }) {
    const [open, setOpen] = useState(false);
    return (
        <details
            class="fold"
            open={open}
            onToggle={event => {
                setOpen(event.currentTarget.open);
            }}
        >
            <summary>{title}</summary>
            {open && children()}
        </details>
    );
}
