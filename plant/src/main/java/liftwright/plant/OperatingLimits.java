package liftwright.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import liftwright.physics.Air;
import liftwright.physics.FanLaw;
import liftwright.plant.OperatingLimit.Kind;
import liftwright.plant.supply.FaultCurrents;
import liftwright.plant.supply.Network;
import liftwright.plant.supply.PackBank;
import liftwright.plant.supply.Wires;
import liftwright.plant.thrust.FanBank;
import liftwright.quantity.Quantity;
import liftwright.rig.CellType;
import liftwright.rig.Contactor;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.LimitName;
import liftwright.rig.Pack;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;

/**
 * Collects how every part stands against its limits. Ratings are the declared ones, whatever was
 * drawn: a limit is not uncertain, it is set. Voltages at rest are those of full packs, since a rig
 * starts a flight full.
 */
final class OperatingLimits {

    private final Rig rig;
    private final SiteAir air;
    private final FanBank fans;
    private final PackBank packs;
    private final Wires wires;
    private final Network network;
    private final FaultCurrents faults;
    private final List<OperatingLimit> found = new ArrayList<>();

    OperatingLimits(
            Rig rig, SiteAir air, FanBank fans, PackBank packs, Wires wires, Network network) {
        this.rig = rig;
        this.air = air;
        this.fans = fans;
        this.packs = packs;
        this.wires = wires;
        this.network = network;
        faults = FaultCurrents.of(Assembler.packNodes(rig), Assembler.fanNodes(rig), wires);
    }

    List<OperatingLimit> of(double[] p, SteadyState state) {
        double[] full = new double[rig.packs().size()];
        packs.rest(p, false, full);
        double[] islandFull = new double[network.islands()];
        for (int pack = 0; pack < full.length; pack++) {
            int island = network.islandOfPack(pack);
            islandFull[island] = Math.max(islandFull[island], full[pack]);
        }
        for (int fan = 0; fan < rig.fans().size(); fan++) {
            fan(p, state, fan, network.isFed(fan) ? islandFull[network.islandOfLoad(fan)] : 0);
        }
        for (int pack = 0; pack < rig.packs().size(); pack++) {
            pack(state, pack, full[pack]);
        }
        Supply supply = new Supply(p, full, islandFull);
        for (int chain = 0; chain < rig.wiring().chains().size(); chain++) {
            chain(supply, state, chain);
        }
        return List.copyOf(found);
    }

    private void fan(double[] p, SteadyState state, int number, double fullV) {
        Fan fan = rig.fans().get(number);
        FanType type = fan.type();
        FanType.Controller controller = type.controller();
        RigPath at = RigPath.of("fan types", type.name());
        RigPath controllerAt = at.child("controller");
        double speed = state.fanSpeedRadps(number);
        share(
                Kind.ROTOR_SPEED,
                fan.id(),
                at.child("rotor").child("top speed"),
                speed,
                type.rotor().topSpeed(),
                LimitName.ROTOR_SPEED_SHARE);
        double sound = Air.speedOfSoundMps(air.temperatureK(p));
        double mach = FanLaw.tipMach(speed, type.tip().si(), sound);
        own(Kind.TIP_MACH, fan.id(), at.child("tip"), mach, LimitName.TIP_MACH);
        OptionalInt pairs = type.motor().polePairs();
        if (pairs.isPresent()) {
            share(
                    Kind.ELECTRICAL_SPEED,
                    fan.id(),
                    controllerAt.child("top electrical speed"),
                    FanLaw.electricalSpeedRadps(speed, pairs.getAsInt()),
                    controller.topElectricalSpeed(),
                    LimitName.ELECTRICAL_SPEED_SHARE);
        }
        share(
                Kind.CONTROLLER_VOLTAGE,
                fan.id(),
                controllerAt.child("top voltage"),
                fullV,
                controller.topVoltage(),
                LimitName.CONTROLLER_VOLTAGE_SHARE);
        share(
                Kind.CAPACITOR_VOLTAGE,
                fan.id(),
                controllerAt.child("capacitor voltage"),
                fullV,
                controller.capacitorVoltage(),
                LimitName.CAPACITOR_VOLTAGE_SHARE);
        share(
                Kind.CONTROLLER_CURRENT,
                fan.id(),
                controllerAt.child("current limit"),
                state.fanWindingA(number),
                controller.currentLimit(),
                LimitName.CONTROLLER_CURRENT_SHARE);
        if (state.fanFed(number)) {
            plain(
                    Kind.CUT_OFF,
                    fan.id(),
                    controllerAt.child("cut-off"),
                    state.fanTerminalV(number),
                    controller.cutOff());
        }
        if (fan.intake().isPresent()) {
            add(
                    Kind.INTAKE_LOSS,
                    fan.id(),
                    fan.intake().get().declaredAt(),
                    fans.intakeLoss(p, number),
                    FanLaw.GREATEST_INTAKE_LOSS,
                    FanLaw.GREATEST_INTAKE_LOSS,
                    Optional.empty());
        }
    }

    private void pack(SteadyState state, int number, double fullV) {
        Pack pack = rig.packs().get(number);
        CellType cell = pack.cell();
        RigPath at = RigPath.of("cells", cell.name());
        double cellA = state.packA(number) / pack.parallel();
        own(
                Kind.CELL_UNDER_LOAD,
                pack.id(),
                pack.declaredAt(),
                state.cellUnderLoadV(number),
                LimitName.CELL_UNDER_LOAD);
        plain(
                Kind.CELL_CONTINUOUS_CURRENT,
                pack.id(),
                at.child("continuous current"),
                cellA,
                cell.continuousCurrent());
        plain(
                Kind.CELL_PEAK_CURRENT,
                pack.id(),
                at.child("peak current"),
                cellA,
                cell.peakCurrent());
        if (cellA < 0) {
            add(
                    Kind.REVERSE_CURRENT,
                    pack.id(),
                    pack.declaredAt(),
                    -state.packA(number),
                    0,
                    0,
                    Optional.empty());
        }
        own(
                Kind.HAZARDOUS_VOLTAGE,
                pack.id(),
                pack.declaredAt(),
                fullV,
                LimitName.HAZARDOUS_VOLTAGE);
    }

    /** The supply at its strongest: full packs, resistance at once. */
    private final class Supply {
        final double[] p;
        final double airK;
        final double[] fullV;
        final double[] islandFullV;
        final double[] packOhm;
        final double[] chainOhm;

        Supply(double[] p, double[] fullV, double[] islandFullV) {
            this.p = p;
            this.fullV = fullV;
            this.islandFullV = islandFullV;
            airK = air.temperatureK(p);
            packOhm = new double[fullV.length];
            packs.resistance(p, airK, false, false, packOhm);
            chainOhm = new double[wires.chains().size()];
            wires.resistance(p, airK, chainOhm);
        }

        double restV(int chain) {
            OptionalInt island = network.islandOfChain(chain);
            return island.isPresent() ? islandFullV[island.getAsInt()] : 0;
        }

        /** Prospective current through the element at a place of a chain, A. */
        double prospectiveA(int chain, int place) {
            double leading = wires.leadingOhm(p, airK, chain, place + 1);
            double before = wires.leadingOhm(p, airK, chain, place);
            return faults.prospectiveA(
                    fullV, packOhm, chainOhm, chain, leading, chainOhm[chain] - before);
        }
    }

    private void chain(Supply supply, SteadyState state, int number) {
        Wiring.Chain chain = rig.wiring().chains().get(number);
        double current = Math.abs(state.chainA(number));
        double restV = supply.restV(number);
        for (int place = 0; place < chain.elements().size(); place++) {
            switch (chain.elements().get(place)) {
                case Element.Run _ -> {}
                case Element.Joint joint ->
                        share(
                                Kind.JOINT_CURRENT,
                                joint.id(),
                                joint.declaredAt().child("rating"),
                                current,
                                joint.rating(),
                                LimitName.JOINT_CURRENT_SHARE);
                case Element.Fuse fuse ->
                        fuse(fuse, current, restV, supply.prospectiveA(number, place));
                case Element.Pole pole ->
                        pole(pole, current, restV, supply.prospectiveA(number, place));
            }
        }
    }

    private void fuse(Element.Fuse fuse, double current, double restV, double prospectiveA) {
        double rating = fuse.rating().si();
        add(
                Kind.FUSE_CURRENT,
                fuse.id(),
                fuse.declaredAt().child("fuse"),
                current,
                rating,
                rating / rig.limits().si(LimitName.FUSE_OVER_CURRENT),
                Optional.of(LimitName.FUSE_OVER_CURRENT));
        breaking(
                Kind.FUSE_BREAKING,
                fuse.id(),
                fuse.declaredAt().child("breaks"),
                prospectiveA,
                fuse.breaks());
        plain(
                Kind.FUSE_VOLTAGE,
                fuse.id(),
                fuse.declaredAt().child("voltage"),
                restV,
                fuse.voltage());
    }

    private void pole(Element.Pole pole, double current, double restV, double prospectiveA) {
        Contactor contactor = pole.contactor();
        RigPath at = RigPath.of("wiring", "contactors", contactor.name());
        plain(Kind.CONTACTOR_CURRENT, pole.id(), at.child("rating"), current, contactor.rating());
        breaking(
                Kind.CONTACTOR_BREAKING,
                pole.id(),
                at.child("breaks"),
                prospectiveA,
                contactor.breaks());
        plain(Kind.CONTACTOR_VOLTAGE, pole.id(), at.child("voltage"), restV, contactor.voltage());
    }

    private void breaking(
            Kind kind, PartId part, RigPath at, double value, Optional<Quantity> rating) {
        double margin = rig.limits().si(LimitName.FUSE_BREAKING_SHARE);
        rating.ifPresent(
                most ->
                        add(
                                kind,
                                part,
                                at,
                                value,
                                most.si(),
                                most.si() / margin,
                                Optional.of(LimitName.FUSE_BREAKING_SHARE)));
    }

    private void share(
            Kind kind,
            PartId part,
            RigPath at,
            double value,
            Optional<Quantity> rating,
            LimitName name) {
        rating.ifPresent(
                most ->
                        add(
                                kind,
                                part,
                                at,
                                value,
                                most.si(),
                                most.si() * rig.limits().si(name),
                                Optional.of(name)));
    }

    private void plain(
            Kind kind, PartId part, RigPath at, double value, Optional<Quantity> rating) {
        rating.ifPresent(
                most -> add(kind, part, at, value, most.si(), most.si(), Optional.empty()));
    }

    private void own(Kind kind, PartId part, RigPath at, double value, LimitName name) {
        double limit = rig.limits().si(name);
        add(kind, part, at, value, limit, limit, Optional.of(name));
    }

    private void add(
            Kind kind,
            PartId part,
            RigPath at,
            double value,
            double rating,
            double limit,
            Optional<LimitName> name) {
        found.add(new OperatingLimit(kind, part, at, value, rating, limit, name));
    }
}
