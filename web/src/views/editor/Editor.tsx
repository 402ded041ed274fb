import { useEffect, useRef } from 'preact/hooks';
import type { DeskView } from '../../core/desk';
import type { Bay } from '../../state/bay';
import { RigEditor } from './RigEditor';

export interface EditorProps {
    bay: Bay;
    view: DeskView;
}

/** The editor of the text, in a shadow of its own: its styles are adopted there, as the policy asks. */
export default function Editor({ bay, view }: EditorProps) {
    const host = useRef<HTMLDivElement>(null);
    const editor = useRef<RigEditor | undefined>(undefined);
    useEffect(() => {
        if (host.current === null) return undefined;
        const made = new RigEditor(host.current, bay, view.text);
        editor.current = made;
        return () => {
            editor.current = undefined;
            made.destroy();
        };
        // Made once: what changes later is handed to it below.
    }, [bay, view.document.rig]);
    useEffect(() => {
        // What stands now, not when this was drawn: somebody may have typed since.
        const now = bay.desk.peek();
        if (now === undefined) return;
        editor.current?.hold(now.text);
        if (now.text === now.document.text) editor.current?.mark(now.document.problems);
    }, [bay, view.text, view.document]);
    const look = bay.look.value;
    useEffect(() => {
        if (look !== undefined) editor.current?.look(look);
    }, [look]);
    return <div ref={host} class="editor" />;
}
