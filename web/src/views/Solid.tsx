import { useState } from 'preact/hooks';
import type { ComponentType } from 'preact';
import type { RigProps } from '../pictures';

/** The rig to turn. Its library is large, so it comes when it is asked for. */
export function Solid(props: RigProps) {
    const [view, setView] = useState<{ View: ComponentType<RigProps> } | undefined>();
    const [state, setState] = useState<'shut' | 'coming' | 'failed'>('shut');
    if (view !== undefined) {
        return (
            <>
                <view.View {...props} />
                <button
                    type="button"
                    class="plain"
                    onClick={() => {
                        setView(undefined);
                        setState('shut');
                    }}
                >
                    Close the 3D view
                </button>
            </>
        );
    }
    return (
        <p>
            <button
                type="button"
                class="plain"
                aria-disabled={state === 'coming'}
                onClick={() => {
                    setState('coming');
                    import('../pictures/SolidView').then(
                        ({ default: View }) => {
                            setView({ View });
                        },
                        () => {
                            setState('failed');
                        },
                    );
                }}
            >
                Turn the rig in 3D
            </button>
            {state === 'failed' && ' The 3D view could not be loaded: is the server running?'}
        </p>
    );
}
