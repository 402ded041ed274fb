/**
 * The local server of the bay: what answers the page, and nobody else.
 *
 * <p>To add something that the page can ask:
 *
 * <ol>
 *   <li>Write one class with a method {@code List<Route> routes()}; it gets the {@link
 *       liftwright.app.bay.Bay} in its constructor (the opened folder, the hub, what to do at the
 *       end). A {@link liftwright.app.bay.Route} is a name, a limit of the body and a handler:
 *       {@code Route.of("complete", call -> Reply.json(json -> ...))} answers {@code POST
 *       /api/complete}.
 *   <li>The handler reads {@code call.body()}, which is a {@link liftwright.app.bay.Json.Members}:
 *       {@code body.text("rig")}, {@code body.whole("from")}. What is missing or of another kind
 *       becomes a fault with a sentence by itself.
 *   <li>It gives back a {@link liftwright.app.bay.Reply}: {@code Reply.json} for one document,
 *       {@code Reply.lines} for a stream, {@code Reply.file} for something to keep. What cannot be
 *       done is a {@link liftwright.app.bay.FaultException}.
 *   <li>Add one line in {@link liftwright.app.bay.AllRoutes}.
 * </ol>
 *
 * <p>A handler runs on a thread of its own, several at once, and may block. It is called only after
 * the host, the origin, the key, the type and the size of the request were judged. Files are found
 * through {@link liftwright.app.bay.OpenedFolder} and in no other way. A stream stops when its
 * reader leaves: {@code lines.tell} then throws, and {@code lines.gone()} says so to work that
 * asks.
 */
@NullMarked
package liftwright.app.bay;

import org.jspecify.annotations.NullMarked;
