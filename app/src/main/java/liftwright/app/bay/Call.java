package liftwright.app.bay;

/**
 * One request, after it was let in.
 *
 * @param body what it carried
 * @param session whose key it showed; equal for the requests of one tab
 */
record Call(Json.Members body, Session session) {}
