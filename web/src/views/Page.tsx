import { useEffect, useMemo } from 'preact/hooks';
import { actionFor } from '../core/action';
import { actionsOf, type Places } from '../state/actions';
import type { Bay } from '../state/bay';
import { Bars } from './Bars';
import { Holding } from './context';
import { CompareSheet } from './compare/CompareSheet';
import { Doorstep } from './Doorstep';
import { FieldDialog, fieldAt } from './FieldDialog';
import { FacingPage } from './FacingPage';
import { GuideSheet } from './GuideSheet';
import { Header } from './Header';
import { Help } from './Help';
import { JobsLine } from './jobs/JobsLine';
import { Ladder } from './Ladder';
import { Search } from './search/Search';
import { Sheet } from './Sheet';
import { Words } from './Words';

/** The whole page. */
export function Page({ bay }: { bay: Bay }) {
    const held = useMemo(() => ({ bay, actions: actionsOf(bay, places) }), [bay]);
    useEffect(() => {
        const press = (event: KeyboardEvent) => {
            if (event.defaultPrevented || ownKey(event)) return;
            const action = actionFor(held.actions, event);
            if (action === undefined || bay.helping.peek() || bay.searching.peek()) return;
            event.preventDefault();
            if (action.enabled()) action.run();
        };
        document.addEventListener('keydown', press);
        return () => {
            document.removeEventListener('keydown', press);
        };
    }, [held, bay]);

    const view = bay.desk.value;
    const facing = bay.facing.value && view !== undefined && !bay.guiding.value;
    return (
        <Holding.Provider value={held}>
            <nav class="skips" aria-label="Skip">
                <a href="#sheet">To the answer</a>
                {facing && <a href="#facing">To the rig file</a>}
            </nav>
            <Header />
            <Bars />
            {bay.gate.state.value === 'out' && view === undefined ? (
                <Doorstep />
            ) : (
                <div class={facing ? 'bench with-facing' : 'bench'}>
                    {view !== undefined && <Ladder />}
                    <main
                        id="sheet"
                        class="sheet"
                        tabIndex={-1}
                        onClick={event => {
                            if (event.defaultPrevented) return;
                            const field = fieldAt(event.target);
                            if (field !== undefined) bay.field.value = field;
                        }}
                    >
                        {bay.guiding.value ? (
                            <GuideSheet />
                        ) : bay.comparing.open.value ? (
                            <CompareSheet />
                        ) : (
                            <Sheet />
                        )}
                    </main>
                    {facing && <FacingPage view={view} />}
                </div>
            )}
            <JobsLine />
            <Words />
            <Help />
            <Search />
            <FieldDialog />
        </Holding.Provider>
    );
}

const places: Places = {
    go(place) {
        // The place may come with the next drawing of the page.
        requestAnimationFrame(() => {
            const at = document.getElementById(place);
            at?.focus({ preventScroll: true });
            at?.scrollIntoView({ block: place === 'facing' ? 'nearest' : 'start' });
        });
    },
};

/** Keys that belong to the field they are typed in: letters, and in a small field its own undo. */
function ownKey(event: KeyboardEvent): boolean {
    const at = event.composedPath()[0];
    if (!(at instanceof HTMLElement)) return false;
    const field = at.matches('input:not([type=checkbox]), textarea, select');
    const control = event.ctrlKey || event.metaKey;
    if (field && control && 'zy'.includes(event.key.toLowerCase())) return true;
    return (field || at.isContentEditable) && !control && !event.altKey && event.key.length === 1;
}
