package liftwright.logbook.entry;

/** An incident as the text of its file. */
final class IncidentText {

    private final Writing out = new Writing();

    private IncidentText() {}

    static String of(Incident incident) {
        var text = new IncidentText();
        text.write(incident);
        return text.out.toString();
    }

    private void write(Incident incident) {
        out.comment("What went wrong. Never edit it: what is learned later is a note.")
                .line(IncidentKeys.HEAD.name(), "1")
                .line(IncidentKeys.DATE.name(), incident.date().toString())
                .text(IncidentKeys.WHAT.name(), incident.what())
                .textIfAny(IncidentKeys.BY.name(), incident.by());
        out.list(
                IncidentKeys.LOGS.name(),
                incident.logs(),
                log ->
                        out.line(IncidentKeys.TEST.name(), log.test().text())
                                .textIfAny(IncidentKeys.DIGEST.name(), log.digest()));
        out.list(
                IncidentKeys.CLOCKS.name(),
                incident.clocks(),
                clock ->
                        out.text(IncidentKeys.NAME.name(), clock.name())
                                .seconds(IncidentKeys.SHIFT.name(), clock.shiftS())
                                .text(IncidentKeys.HOW.name(), clock.how()));
        out.list(
                IncidentKeys.TIMELINE.name(),
                incident.timeline(),
                event ->
                        out.seconds(IncidentKeys.TIME.name(), event.timeS())
                                .textIfAny(IncidentKeys.CLOCK.name(), event.clock())
                                .text(IncidentKeys.SEEN.name(), event.what()));
        out.list(
                IncidentKeys.CAUSES.name(),
                incident.causes(),
                cause ->
                        out.text(IncidentKeys.CAUSE.name(), cause.cause())
                                .texts(IncidentKeys.FOR.name(), cause.speaksFor())
                                .texts(IncidentKeys.AGAINST.name(), cause.speaksAgainst()));
        incident.card().ifPresent(card -> out.text(IncidentKeys.CARD.name(), card.text()));
        out.textIfAny(IncidentKeys.WHY.name(), incident.why());
    }
}
