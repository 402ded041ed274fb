/** The whole page. */
export function Bay() {
    return <main>Liftwright</main>;
}
