import type { RefObject } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';

/** Before anything is measured, pixels. */
const ROOM = 1140;

/** How wide an element is, pixels; letters keep their size, so the drawing is laid to it. */
export function useWidth(element: RefObject<HTMLElement | null>): number {
    const [width, setWidth] = useState(ROOM);
    useLayoutEffect(() => {
        const home = element.current;
        if (!home) {
            return undefined;
        }
        const measure = (): void => {
            if (home.clientWidth > 0) {
                setWidth(home.clientWidth);
            }
        };
        measure();
        const watched = new ResizeObserver(measure);
        watched.observe(home);
        return () => {
            watched.disconnect();
        };
    }, [element]);
    return width;
}
