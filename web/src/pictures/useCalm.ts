import { useEffect, useMemo, useState } from 'preact/hooks';

/** Whether the reader wants nothing to move by itself. */
export function useCalm(): boolean {
    const query = useMemo(() => matchMedia('(prefers-reduced-motion: reduce)'), []);
    const [calm, setCalm] = useState(query.matches);
    useEffect(() => {
        const changed = (): void => {
            setCalm(query.matches);
        };
        query.addEventListener('change', changed);
        return () => {
            query.removeEventListener('change', changed);
        };
    }, [query]);
    return calm;
}
