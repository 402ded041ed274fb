import { useAction } from './context';

/** A button for an action. It stays in the order of Tab when there is nothing to do, so that no focus is lost. */
export function ActionButton({ id, done }: { id: string; done?: () => void }) {
    const action = useAction(id);
    const enabled = action.enabled();
    const key = action.keys?.split(' ')[0];
    return (
        <button
            type="button"
            class="plain"
            aria-disabled={!enabled}
            aria-keyshortcuts={key?.replace('Ctrl', 'Control')}
            onClick={() => {
                if (!enabled) return;
                action.run();
                done?.();
            }}
        >
            {action.label()}
            {key !== undefined && (
                <kbd class="key" aria-hidden="true">
                    {key}
                </kbd>
            )}
        </button>
    );
}
