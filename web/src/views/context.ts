import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Action } from '../core/action';
import type { Bay } from '../state/bay';

interface Held {
    bay: Bay;
    actions: Action[];
}

export const Holding = createContext<Held | undefined>(undefined);

export function useBay(): Bay {
    return useHeld().bay;
}

export function useAction(id: string): Action {
    const found = useHeld().actions.find(action => action.id === id);
    if (found === undefined) throw new Error(`no action ${id}`);
    return found;
}

export function useActions(): Action[] {
    return useHeld().actions;
}

function useHeld(): Held {
    const held = useContext(Holding);
    if (held === undefined) throw new Error('outside of the bay');
    return held;
}
