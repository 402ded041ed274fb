import type { Action } from '../core/action';
import { LADDER } from '../core/questions';
import type { Link } from '../core/wire';
import type { Bay } from './bay';
import { saveBlob } from './save';

/** Everything that can be done by name: each stands in the menu or on a button, and in the list of keys. */
export function actionsOf(bay: Bay, places: Places): Action[] {
    const document = () => bay.desk.value?.document;
    const there = () => document() !== undefined;
    const save: Action = {
        id: 'save',
        label: () => 'Save',
        keys: 'Ctrl+S',
        enabled: () =>
            bay.desk.value !== undefined &&
            (document()?.saved === false || bay.desk.value.unsent) &&
            document()?.conflict === undefined,
        run: () => {
            bay.save();
        },
    };
    const undo: Action = {
        id: 'undo',
        label: () => 'Undo',
        keys: 'Ctrl+Z',
        enabled: () => document()?.undo !== undefined || bay.desk.value?.unsent === true,
        run: () => {
            bay.undo();
        },
    };
    const redo: Action = {
        id: 'redo',
        label: () => 'Redo',
        keys: 'Ctrl+Y Ctrl+Shift+Z',
        enabled: () => document()?.redo !== undefined,
        run: () => {
            bay.redo();
        },
    };
    const open = LADDER.map(({ question, words }, index): Action => ({
        id: `open-${question}`,
        label: () => `Open “${words}”`,
        keys: `Alt+${index + 1}`,
        enabled: there,
        run: () => {
            bay.guiding.value = false;
            bay.comparing.open.value = false;
            bay.open.value = question;
            places.go('sheet');
        },
    }));
    return [
        save,
        undo,
        redo,
        ...open,
        {
            id: 'go-ladder',
            label: () => 'Go to the questions',
            keys: 'Alt+Q',
            enabled: there,
            run: () => {
                places.go('ladder');
            },
        },
        {
            id: 'go-facing',
            label: () => 'Go to the rig file',
            keys: 'Alt+R',
            enabled: there,
            run: () => {
                bay.facing.value = true;
                places.go('facing');
            },
        },
        {
            id: 'facing',
            label: () => (bay.facing.value ? 'Close the rig file' : 'Open the rig file beside'),
            keys: 'Alt+B',
            enabled: there,
            run: () => {
                bay.facing.value = !bay.facing.value;
            },
        },
        {
            id: 'outline',
            label: () =>
                bay.outlined.value ? 'Show the file as text' : 'Show the file as outline',
            keys: 'Alt+O',
            enabled: there,
            run: () => {
                bay.facing.value = true;
                bay.outlined.value = !bay.outlined.value;
            },
        },
        {
            id: 'stop',
            label: () => 'Stop answering',
            keys: 'Alt+.',
            enabled: () => Object.values(bay.asks.rungs.value).some(r => r.state === 'asking'),
            run: () => {
                bay.stop();
            },
        },
        {
            id: 'again',
            label: () => 'Answer again',
            keys: 'Alt+A',
            enabled: () => document()?.readable === true,
            run: () => {
                bay.askAgain(true);
            },
        },
        {
            id: 'compare',
            label: () => 'Compare with another revision',
            keys: 'Alt+C',
            enabled: () => document()?.readable === true,
            run: () => {
                bay.guiding.value = false;
                bay.comparing.open.value = true;
                places.go('sheet');
            },
        },
        {
            id: 'search',
            label: () => 'Search',
            keys: '/ Alt+/',
            enabled: there,
            run: () => {
                bay.searching.value = true;
            },
        },
        {
            id: 'report',
            label: () => 'Save a report of all answers',
            enabled: there,
            run: () => void saveReport(bay),
        },
        {
            id: 'save-text',
            label: () => 'Save a copy of the rig file',
            enabled: there,
            run: () => {
                const view = bay.desk.value;
                if (view !== undefined) {
                    saveBlob(
                        new Blob([view.text], { type: 'text/yaml' }),
                        lastName(view.document.rig),
                    );
                }
            },
        },
        {
            id: 'guide',
            label: () => 'Begin another rig',
            enabled: () => bay.folder.value !== undefined,
            run: () => {
                bay.guiding.value = true;
                places.go('sheet');
            },
        },
        {
            id: 'tab',
            label: () => 'Open another tab',
            enabled: () => bay.gate.state.value === 'in',
            run: () => void anotherTab(bay),
        },
        {
            id: 'help',
            label: () => 'Keys, and what this page is',
            keys: '? F1',
            enabled: () => true,
            run: () => {
                bay.helping.value = true;
            },
        },
    ];
}

/** Where the page can take the focus. */
export interface Places {
    go(place: 'ladder' | 'sheet' | 'facing'): void;
}

async function saveReport(bay: Bay): Promise<void> {
    const where = bay.where();
    if (where === undefined) return;
    bay.tell('The report is being made.');
    const reply = await bay.server.file('/api/report', {
        rig: where.rig,
        base: where.revision,
        units: where.units,
    });
    if (reply.kind === 'done') {
        saveBlob(reply.value, `${lastName(where.rig).replace(/\.ya?ml$/, '')}-report.html`);
        bay.tell('The report is saved.');
    } else {
        bay.tell(reply.kind === 'fault' ? reply.fault.sentence : 'The server does not answer.');
    }
}

async function anotherTab(bay: Bay): Promise<void> {
    const reply = await bay.server.call<Link>('/api/link', {});
    if (reply.kind === 'done') window.open(reply.value.url, '_blank', 'noopener');
    else bay.tell(reply.kind === 'fault' ? reply.fault.sentence : 'The server does not answer.');
}

function lastName(path: string): string {
    return path.slice(path.lastIndexOf('/') + 1);
}
