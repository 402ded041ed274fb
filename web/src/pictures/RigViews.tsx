import type { RigProps } from './api';

/** The rig from above, from behind and from its side. */
export function RigViews({ drawing }: RigProps) {
    return <p>{drawing.title}</p>;
}
