/** What every page carries. */
export function Words() {
    return (
        <footer class="words">
            <p>
                <strong>This is a calculation, not a certificate. The work can hurt people.</strong>{' '}
                Test restrained first, with a remote throttle, two independent kills and nobody in
                the plane of the fans; eye and ear protection; a fire plan for lithium packs.
                Capacitors stay charged after the packs are out. Local aviation and electrical rules
                and licensed practice decide.
            </p>
        </footer>
    );
}
