import { useRef, useState } from 'preact/hooks';
import type { Theme } from '../state/taste';
import { ActionButton } from './ActionButton';
import { Told } from './Bars';
import { useBay } from './context';

/** Name of the rig, whether it is saved, and what is done most often. */
export function Header() {
    const bay = useBay();
    const view = bay.desk.value;
    const state =
        view === undefined
            ? undefined
            : view.link !== 'there'
              ? 'not connected: kept in this page'
              : view.unsent
                ? 'sending'
                : view.document.saved
                  ? 'saved'
                  : 'not saved to the file yet';
    return (
        <header class="head">
            <div class="name">
                <span class="mark">Liftwright</span>
                <h1>{view === undefined ? 'The bay' : nameOf(view.text, view.document.rig)}</h1>
                {state !== undefined && <span class="state">{state}</span>}
            </div>
            <Told />
            <div class="tools">
                {view !== undefined && (
                    <>
                        <ActionButton id="save" />
                        <ActionButton id="undo" />
                        <ActionButton id="redo" />
                        <ActionButton id="search" />
                        <label class="pick">
                            <span>Units</span>
                            <select
                                value={bay.taste.units.value}
                                onChange={event => {
                                    bay.taste.units.value =
                                        event.currentTarget.value === 'us' ? 'us' : 'si';
                                }}
                            >
                                <option value="si">N, kg, mm</option>
                                <option value="us">lbf, lb, in</option>
                            </select>
                        </label>
                    </>
                )}
                <Menu />
            </div>
        </header>
    );
}

const THEMES: Theme[] = ['as the system', 'light', 'dark'];

function Menu() {
    const bay = useBay();
    const [open, setOpen] = useState(false);
    const button = useRef<HTMLButtonElement>(null);
    const close = () => {
        setOpen(false);
        button.current?.focus();
    };
    const rigs = bay.folder.value?.rigs ?? [];
    return (
        <div
            class="menu"
            onKeyDown={event => {
                if (event.key === 'Escape' && open) {
                    event.preventDefault();
                    close();
                }
            }}
            onFocusOut={event => {
                const to = event.relatedTarget;
                if (to instanceof Node && !event.currentTarget.contains(to)) setOpen(false);
            }}
        >
            <button
                ref={button}
                type="button"
                class="plain"
                aria-expanded={open}
                aria-controls="menu"
                onClick={() => {
                    if (!open && bay.gate.state.peek() === 'in') void bay.list();
                    setOpen(!open);
                }}
            >
                Menu
            </button>
            {open && (
                <div id="menu" class="menu-sheet">
                    <div class="column">
                        {MENU.map(id => (
                            <ActionButton key={id} id={id} done={close} />
                        ))}
                    </div>
                    <label class="pick">
                        <span>Colours</span>
                        <select
                            value={bay.taste.theme.value}
                            onChange={event => {
                                const chosen = event.currentTarget.value;
                                bay.taste.theme.value =
                                    THEMES.find(theme => theme === chosen) ?? 'as the system';
                            }}
                        >
                            {THEMES.map(theme => (
                                <option key={theme} value={theme}>
                                    {theme}
                                </option>
                            ))}
                        </select>
                    </label>
                    {rigs.length > 0 && (
                        <div class="column">
                            <h2>Rigs of {bay.folder.value?.name}</h2>
                            {rigs.map(rig => (
                                <button
                                    key={rig.path}
                                    type="button"
                                    class="plain"
                                    aria-current={rig.path === bay.desk.value?.document.rig}
                                    onClick={() => {
                                        void bay.openRig(rig.path);
                                        close();
                                    }}
                                >
                                    {rig.name} <span class="quiet">{rig.path}</span>
                                </button>
                            ))}
                        </div>
                    )}
                </div>
            )}
        </div>
    );
}

const MENU = [
    'search',
    'compare',
    'report',
    'save-text',
    'facing',
    'outline',
    'again',
    'stop',
    'tab',
    'guide',
    'help',
];

/** What the file calls the rig, as far as it can be seen without reading it whole. */
function nameOf(text: string, path: string): string {
    const named = /^rig:[ \t]*(?:"([^"\n]*)"|'([^'\n]*)'|([^#\n]*))/m.exec(text);
    const name = (named?.[1] ?? named?.[2] ?? named?.[3] ?? '').trim();
    return name === '' ? path : name;
}
