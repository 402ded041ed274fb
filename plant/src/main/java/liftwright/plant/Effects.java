package liftwright.plant;

/**
 * What stands between the rated and the usable lift. Each effect can be left out, so that a ledger
 * of losses can switch them on one after another, every step a full solution.
 *
 * @param siteDensity air of the site; else 1.225 kg/m³
 * @param charge packs at the charge at which lift is judged, or their own if that is lower; else
 *     full
 * @param groupShare duty of each control group at full throttle; else 1
 * @param sag voltage lost in packs and wiring under load; else every fan sees the voltage that the
 *     wiring would show it with no fan running
 * @param intake losses of grilles and screens
 * @param lean cants, mount angles and posture: only the upward part of the thrust counts; else all
 *     of it does
 * @param installation installation factors, and what a seller's figure is worth
 */
public record Effects(
        boolean siteDensity,
        boolean charge,
        boolean groupShare,
        boolean sag,
        boolean intake,
        boolean lean,
        boolean installation) {

    /** Nothing between: what the fans are rated at. */
    public static final Effects RATED =
            new Effects(false, false, false, false, false, false, false);

    /** The rig as it is. */
    public static final Effects ALL = new Effects(true, true, true, true, true, true, true);

    public Effects withSiteDensity(boolean on) {
        return new Effects(on, charge, groupShare, sag, intake, lean, installation);
    }

    public Effects withCharge(boolean on) {
        return new Effects(siteDensity, on, groupShare, sag, intake, lean, installation);
    }

    public Effects withGroupShare(boolean on) {
        return new Effects(siteDensity, charge, on, sag, intake, lean, installation);
    }

    public Effects withSag(boolean on) {
        return new Effects(siteDensity, charge, groupShare, on, intake, lean, installation);
    }

    public Effects withIntake(boolean on) {
        return new Effects(siteDensity, charge, groupShare, sag, on, lean, installation);
    }

    public Effects withLean(boolean on) {
        return new Effects(siteDensity, charge, groupShare, sag, intake, on, installation);
    }

    public Effects withInstallation(boolean on) {
        return new Effects(siteDensity, charge, groupShare, sag, intake, lean, on);
    }
}
