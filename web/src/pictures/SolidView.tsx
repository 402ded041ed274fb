import type { RigProps } from './api';

/** The rig to turn. */
export default function SolidView({ drawing }: RigProps) {
    return <p>{drawing.title}</p>;
}
