import { useBay } from '../context';

/** Which profile is flown, where there is more than one beside the rig file. */
export function ProfileChoice() {
    const { flights } = useBay();
    const profiles = flights.profiles.value;
    if (profiles.length === 0) {
        return (
            <p class="quiet">
                No profile lies in the folder “profiles” beside this rig file: it lifts half a
                metre, holds and lands.
            </p>
        );
    }
    return (
        <p class="row">
            <label>
                Profile{' '}
                <select
                    value={flights.chosen.value ?? profiles[0]}
                    onChange={event => {
                        flights.choose(event.currentTarget.value);
                    }}
                >
                    {profiles.map(profile => (
                        <option key={profile} value={profile}>
                            {profile}
                        </option>
                    ))}
                </select>
            </label>
        </p>
    );
}
