/** In place of what is drawn in space. */
export function NoWebGl() {
    return (
        <p>
            This browser draws nothing in 3D (WebGL is missing or switched off). The flat pictures
            and the tables show the same.
        </p>
    );
}
