import { useEffect, useRef } from 'preact/hooks';
import { useActions, useBay } from './context';

/** Every key, and what is what. */
export function Help() {
    const bay = useBay();
    const actions = useActions();
    const dialog = useRef<HTMLDialogElement>(null);
    const open = bay.helping.value;
    useEffect(() => {
        if (open) dialog.current?.showModal();
        else dialog.current?.close();
    }, [open]);
    return (
        <dialog
            ref={dialog}
            class="help"
            aria-labelledby="help-title"
            onClose={() => {
                bay.helping.value = false;
            }}
        >
            {open && (
                <>
                    <h2 id="help-title">Keys, and what this page is</h2>
                    <p>
                        On the left the questions with their verdicts. In the middle the one that is
                        open: its picture, its numbers, what was found. On the right the rig file.
                        Every change is answered at once; nothing is written to the file before you
                        save.
                    </p>
                    <p>
                        A verdict is <em>met</em>, <em>not met</em> or <em>cannot be told</em>. It
                        is pale while it speaks of the rig before your last change.
                    </p>
                    <table>
                        <thead>
                            <tr>
                                <th scope="col">Key</th>
                                <th scope="col">Does</th>
                            </tr>
                        </thead>
                        <tbody>
                            {actions
                                .filter(action => action.keys !== undefined)
                                .map(action => (
                                    <tr key={action.id}>
                                        <td>
                                            {action.keys?.split(' ').map(key => (
                                                <kbd key={key}>{key}</kbd>
                                            ))}
                                        </td>
                                        <td>{action.label()}</td>
                                    </tr>
                                ))}
                            <tr>
                                <td>
                                    <kbd>Ctrl+Space</kbd>
                                </td>
                                <td>In the rig file: what can stand here</td>
                            </tr>
                            <tr>
                                <td>
                                    <kbd>Ctrl+F</kbd>
                                </td>
                                <td>In the rig file: find</td>
                            </tr>
                            <tr>
                                <td>
                                    <kbd>Esc</kbd> <kbd>Tab</kbd>
                                </td>
                                <td>Leaves the rig file</td>
                            </tr>
                        </tbody>
                    </table>
                    <button
                        type="button"
                        class="strong"
                        onClick={() => {
                            bay.helping.value = false;
                        }}
                    >
                        Close
                    </button>
                </>
            )}
        </dialog>
    );
}
