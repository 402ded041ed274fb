package liftwright.answer;

import liftwright.rig.Change;

/** A change of a rig file as JSON: of a remedy, or of a part that was moved. */
public final class ChangeJson {

    private ChangeJson() {}

    /** Writes one as an object. */
    public static void write(Change change, JsonText json) {
        json.object(() -> members(change, json));
    }

    private static void members(Change change, JsonText json) {
        switch (change) {
            case Change.Set set -> begin("set", set, json).member("value", set.value());
            case Change.Add add ->
                    begin("add", add, json).member("key", add.key()).member("value", add.value());
            case Change.Remove remove -> begin("remove", remove, json);
            case Change.Replace replace ->
                    begin("replace", replace, json).member("value", replace.value());
            case Change.Move move -> begin("move", move, json).name("index").whole(move.index());
        }
    }

    private static JsonText begin(String kind, Change change, JsonText json) {
        return json.member("kind", kind).member("at", change.at().toString());
    }
}
