import { useEffect, useId, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { everything, search, type Found } from '../../core/search';
import { useActions, useBay } from '../context';

/** One box for parts, findings, numbers, places of the file and what can be done. */
export function Search() {
    const bay = useBay();
    const dialog = useRef<HTMLDialogElement>(null);
    const open = bay.searching.value;
    // Before the next key is read: what is typed fast goes into the box, not to the page behind it.
    useLayoutEffect(() => {
        if (open) dialog.current?.showModal();
        else dialog.current?.close();
    }, [open]);
    return (
        <dialog
            ref={dialog}
            class="help search"
            aria-label="Search"
            onClose={() => {
                bay.searching.value = false;
            }}
        >
            {open && <Box />}
        </dialog>
    );
}

function Box() {
    const bay = useBay();
    const actions = useActions();
    const [typed, setTyped] = useState('');
    const [at, setAt] = useState(0);
    const id = useId();
    const input = useRef<HTMLInputElement>(null);
    const document_ = bay.desk.value?.document;
    const rungs = bay.asks.rungs.value;
    const all = useMemo(() => everything(document_, rungs, actions), [document_, rungs, actions]);
    const hits = useMemo(() => search(all, typed), [all, typed]);
    const chosen = Math.min(at, hits.length - 1);
    useEffect(() => {
        input.current?.focus();
    }, []);
    useEffect(() => {
        document.getElementById(`${id}-${chosen}`)?.scrollIntoView({ block: 'nearest' });
    }, [chosen, id]);
    const go = useGo();
    return (
        <>
            <label for={id}>Search parts, findings, numbers and the file</label>
            <input
                ref={input}
                id={id}
                type="text"
                role="combobox"
                autocomplete="off"
                aria-expanded={hits.length > 0}
                aria-controls={`${id}-list`}
                aria-autocomplete="list"
                {...(hits.length > 0 && { 'aria-activedescendant': `${id}-${chosen}` })}
                value={typed}
                onInput={event => {
                    setTyped(event.currentTarget.value);
                    setAt(0);
                }}
                onKeyDown={event => {
                    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
                    if (step !== undefined && hits.length > 0) {
                        event.preventDefault();
                        setAt((chosen + step + hits.length) % hits.length);
                    }
                    const hit = hits[chosen];
                    if (event.key === 'Enter' && hit !== undefined) {
                        event.preventDefault();
                        go(hit);
                    }
                }}
            />
            <p class="quiet" role="status">
                {typed.trim() === ''
                    ? 'Type a word or several: all of them must occur.'
                    : hits.length === 0
                      ? 'Nothing has all these words.'
                      : `${hits.length} found. Arrows choose, Enter opens, Escape closes.`}
            </p>
            <ul id={`${id}-list`} role="listbox" aria-label="Found">
                {hits.map((hit, k) => (
                    <li
                        key={k}
                        id={`${id}-${k}`}
                        role="option"
                        aria-selected={k === chosen}
                        onClick={() => {
                            go(hit);
                        }}
                    >
                        <span class="kind">{hit.kind}</span> {hit.words}{' '}
                        <span class="quiet">{hit.place}</span>
                    </li>
                ))}
            </ul>
        </>
    );
}

/** Opens the place of what was found. */
function useGo(): (hit: Found) => void {
    const bay = useBay();
    const actions = useActions();
    return ({ go }) => {
        bay.searching.value = false;
        switch (go.to) {
            case 'part':
                bay.show(go.part);
                bay.facing.value = true;
                return;
            case 'path':
                bay.facing.value = true;
                bay.show(undefined, go.path);
                return;
            case 'question':
                bay.guiding.value = false;
                bay.comparing.open.value = false;
                bay.open.value = go.question;
                if (go.part !== undefined || go.path !== undefined) bay.show(go.part, go.path);
                requestAnimationFrame(() => {
                    reveal(go.section);
                });
                return;
            case 'field':
                bay.field.value = go.field;
                return;
            case 'action': {
                const action = actions.find(each => each.id === go.id);
                if (action?.enabled() === true) action.run();
            }
        }
    };
}

/** Opens the fold that a section lies in, and goes there. */
function reveal(section: string | undefined): void {
    const at =
        section === undefined
            ? document.getElementById('sheet')
            : document.getElementById(`section-${section}`);
    if (at instanceof HTMLElement) {
        const fold = at.querySelector('details');
        if (fold !== null) fold.open = true;
        at.focus({ preventScroll: true });
        at.scrollIntoView({ block: 'start' });
    }
}
