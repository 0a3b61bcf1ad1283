package org.longsummer.web;

import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import org.longsummer.files.Answers;
import org.longsummer.files.FileRefused;
import org.longsummer.files.Findings;
import org.longsummer.files.Handover;
import org.longsummer.files.Stoppable;
import org.longsummer.files.TemporaryDirectory;
import org.longsummer.files.Understood;
import org.longsummer.store.Intake;
import org.longsummer.store.Store;
import org.longsummer.store.Trouble;
import org.longsummer.wire.Problem;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The files of one handover and how far they have come. */
final class HandoverWork {
    private static final Logger LOG = LoggerFactory.getLogger(HandoverWork.class);

    /** How far they have come. */
    enum State { LOOKING, ASKING, TRIED, TAKING, TAKEN, REFUSED, STOPPED, FAILED }

    /** One step of the work, which says where it led. */
    private interface Step {
        State go() throws IOException, FileRefused;
    }

    private final Store store;
    private final Asking asking;
    private final String id = HandoverApi.newId();
    private final TemporaryDirectory workplace = temporary();
    private final List<Path> files;
    private final Handover handover;
    private final List<Answers> answers = new ArrayList<>();
    private volatile HandoverView.Progress progress = HandoverView.Progress.NONE;
    private volatile Stoppable stoppable = new Stoppable(this::note);
    private volatile State state = State.LOOKING;
    private volatile List<Understood> understood = List.of();
    private volatile Tried tried = new Tried();
    private volatile Optional<ImportApi.Imported> taken = Optional.empty();
    private volatile List<Problem> problems = List.of();
    private volatile Instant touched;

    HandoverWork(Store store, Asking asking, List<UploadedFile> uploaded) throws IOException {
        this.store = store;
        this.asking = asking;
        this.files = HandoverApi.saved(uploaded, workplace.path());
        this.handover = new Handover(store, asking.reach(), asking.name(), files, workplace.path());
        this.touched = store.clock().instant();
        files.forEach(file -> answers.add(Answers.NONE));
    }

    private static TemporaryDirectory temporary() {
        try {
            return new TemporaryDirectory("longsummer-handover");
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    String id() {
        return id;
    }

    boolean isOf(Asking other) {
        touched = store.clock().instant();
        return other.person().map(person -> person.id()).equals(asking.person().map(person -> person.id()));
    }

    boolean touchedBefore(Instant moment) {
        return touched.isBefore(moment);
    }

    boolean isIdle() {
        return state != State.LOOKING && state != State.TAKING;
    }

    private void note(String what) {
        HandoverView.Progress before = progress;
        progress = new HandoverView.Progress(what, before.what().equals(what) ? before.done() + 1 : 1);
    }

    /** Finds out what there is, with what was said besides; when nothing is open, tries it out. */
    synchronized void look(ExecutorService worker, List<Answers> said) {
        refuseUnless(isIdle() && state != State.TAKEN && state != State.STOPPED || state == State.LOOKING && understood.isEmpty() && tried.isEmpty());
        for (int i = 0; i < Math.min(said.size(), answers.size()); i++) {
            answers.set(i, said.get(i).or(answers.get(i)));
        }
        begin(worker, State.LOOKING, () -> {
            understood = handover.understand(List.copyOf(answers), stoppable);
            if (!handover.isUnderstood()) {
                return State.ASKING;
            }
            Tried trying = new Tried();
            trying.remark(handover.tryOut(stoppable, trying::note));
            tried = trying;
            return State.TRIED;
        });
    }

    synchronized void take(ExecutorService worker) {
        refuseUnless(state == State.TRIED);
        begin(worker, State.TAKING, () -> {
            Findings findings = new Findings();
            Intake.Report report = handover.take(findings, stoppable);
            taken = Optional.of(new ImportApi.Imported(report.unitsAdded(), report.unitsChanged(), report.visitsStored(), report.visitsAlreadyStored(),
                    findings.remarks()));
            return State.TAKEN;
        });
    }

    private void refuseUnless(boolean possible) {
        if (!possible) {
            throw Refused.conflict("handover", state.name().toLowerCase(Locale.ROOT), "This cannot be done with these files now.",
                    "Look how far they have come, or hand them over again.");
        }
    }

    private void begin(ExecutorService worker, State during, Step step) {
        state = during;
        problems = List.of();
        progress = HandoverView.Progress.NONE;
        worker.execute(() -> {
            store.acting().begin(asking.actor());
            try {
                end(step.go());
            } catch (Stoppable.Stopped stopped) {
                end(State.STOPPED);
            } catch (FileRefused refused) {
                problems = ImportApi.problems(refused);
                end(State.REFUSED);
            } catch (IOException | RuntimeException e) {
                fail(e);
            } finally {
                store.acting().end();
            }
        });
    }

    private synchronized void end(State reached) {
        state = reached;
        if (reached == State.STOPPED || reached == State.TAKEN) {
            forget();
        }
    }

    private void fail(Exception failure) {
        Optional<Trouble> trouble = Trouble.in(failure);
        LOG.atError().setCause(trouble.isPresent() ? null : failure).addKeyValue("trouble", trouble.map(Trouble::word).orElse("")).log("handover failed");
        problems = List.of(trouble.map(known -> new Problem("", "", known.limit(), known.remedy()))
                .orElse(new Problem("", "", "Longsummer failed at this; nothing was changed.", "Try again; if it stays, the program's output says why.")));
        end(State.FAILED);
    }

    /** What goes on comes to its end at its next step; then nothing of it is left. */
    synchronized void stop() {
        stoppable.stop();
        if (isIdle() && state != State.TAKEN) {
            end(State.STOPPED);
        }
    }

    void forget() {
        try {
            workplace.close();
        } catch (IOException e) {
            LOG.atWarn().log("files of a handover could not be removed");
        }
    }

    HandoverView view() {
        return HandoverView.of(id, state, progress, stoppable.isStopped() && !isIdle(), understood, tried, taken, problems);
    }
}
