import type { ComponentType } from 'preact';
import { useState } from 'preact/hooks';

interface InSpaceProps<P> {
    /** What it shows, for a listener. */
    title: string;
    /** The view and the library that it needs come when they are asked for. */
    load: () => Promise<{ default: ComponentType<P> }>;
    props: P;
}

/** The same in space, to turn: opened by a button, since its library is large. */
export function InSpace<P extends object>({ title, load, props }: InSpaceProps<P>) {
    const [view, setView] = useState<{ View: ComponentType<P> } | undefined>();
    const [state, setState] = useState<'shut' | 'coming' | 'failed'>('shut');
    const toggle = (): void => {
        if (view) {
            setView(undefined);
            setState('shut');
            return;
        }
        setState('coming');
        load().then(
            ({ default: View }) => {
                setView({ View });
            },
            () => {
                setState('failed');
            },
        );
    };
    return (
        <>
            <p class="view-words">
                <button
                    type="button"
                    aria-pressed={view !== undefined}
                    aria-label={`${title}: in 3D`}
                    aria-disabled={state === 'coming' && view === undefined}
                    onClick={toggle}
                >
                    in 3D
                </button>
                {state === 'failed' && ' It could not be loaded: is the server running?'}
            </p>
            {view && <view.View {...props} />}
        </>
    );
}
