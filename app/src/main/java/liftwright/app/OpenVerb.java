package liftwright.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import liftwright.app.bay.BayServer;
import liftwright.report.PlainText;

/** {@code open}: serves the bay until it is interrupted. */
final class OpenVerb {

    private final Voice voice;
    private final Surroundings around;
    private final Options options;
    private final Interrupt interrupt;
    private final Consumer<Throwable> faults;

    OpenVerb(
            Voice voice,
            Surroundings around,
            Options options,
            Interrupt interrupt,
            Consumer<Throwable> faults) {
        this.voice = voice;
        this.around = around;
        this.options = options;
        this.interrupt = interrupt;
        this.faults = faults;
    }

    Exit run() {
        if (!BayServer.hasPage()) {
            throw new UsageException(
                    "the page is not in this build. Node 20 or newer makes it: install nodejs and npm,"
                            + " then run ./liftwright open again from the source");
        }
        BayServer.Opening opening = opening(options.name().isEmpty() ? "." : options.name());
        return switch (BayServer.open(opening)) {
            case BayServer.Opened.Here(var server) -> serve(server, opening.folder());
            case BayServer.Opened.Already(var link) -> {
                say("is open already; here is another link to it, good once:");
                show(link, opening.folder());
                yield Exit.CLEAR;
            }
            case BayServer.Opened.Not(var sentence) -> throw new UsageException(sentence);
        };
    }

    /** A folder is opened as it is, a file by the folder that holds it. */
    private BayServer.Opening opening(String named) {
        Path path = UserFile.path(named, around.folder());
        boolean folder = Files.isDirectory(path);
        if (!folder && !Files.exists(path)) {
            throw new UsageException("no file or folder " + named);
        }
        Path parent = path.toAbsolutePath().normalize().getParent();
        Optional<String> rig =
                folder
                        ? Optional.of("rig.yaml").filter(n -> Files.exists(path.resolve(n)))
                        : Optional.of(path.getFileName().toString());
        return new BayServer.Opening(
                folder || parent == null ? path : parent,
                rig,
                options.port(),
                Program.VERSION,
                faults);
    }

    private Exit serve(BayServer server, Path folder) {
        try (server) {
            show(server.link(), folder);
            server.readAhead();
            say("serves this machine alone, until Ctrl-C. The link is good once.");
            interrupt.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (IOException e) {
            throw new UsageException("did not stop cleanly: " + e.getMessage());
        }
        return Exit.CLEAR;
    }

    private void show(String link, Path folder) {
        voice.answer(link + "\n");
        if (options.has(Grammar.NO_BROWSER)) {
            return;
        }
        try {
            Optional<Browser> browser = Browser.find(System.getenv());
            if (browser.isPresent()) {
                browser.get().open(BayServer.jump(folder, link));
            }
        } catch (IOException e) {
            say("no browser could be started (" + e.getMessage() + "): open the link yourself");
        }
    }

    private void say(String sentence) {
        voice.aside(PlainText.of("liftwright: " + sentence, !around.utf8()));
    }
}
