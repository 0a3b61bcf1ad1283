package org.longsummer.web;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.TimeUnit;
import org.longsummer.access.Secret;
import org.longsummer.files.Answers;
import org.longsummer.store.Store;
import org.longsummer.wire.Problem;

/**
 * Files that somebody hands over on a page: looked through, asked about, tried out and taken in, step by step, while the page watches and
 * may stop it. One after the other; what nobody came back to is forgotten.
 */
final class HandoverApi implements AutoCloseable {
    private static final Duration LONGEST_WAIT = Duration.ofHours(2);
    /** So long may what was stopped take to undo itself before the record is closed. */
    private static final int LONGEST_GOODBYE_SECONDS = 20;
    private static final int MOST = 20;
    private static final int MOST_FILES = 10;

    private final Store store;
    private final Map<String, HandoverWork> works = new LinkedHashMap<>();
    private final ExecutorService worker;

    HandoverApi(Store store) {
        this.store = store;
        ThreadFactory daemon = work -> {
            Thread thread = new Thread(work, "handovers");
            thread.setDaemon(true);
            return thread;
        };
        this.worker = Executors.newSingleThreadExecutor(daemon);
    }

    /** What somebody says of one file: answers by the keys of the questions, and what its columns are. */
    record Said(Map<String, String> answers, Optional<List<String>> columns) {}

    /** The same of all files, in their order. */
    record AnswersForm(List<Said> files) {}

    void begin(Context request) throws IOException {
        List<UploadedFile> files = request.uploadedFiles().stream().filter(file -> file.size() > 0 || !file.filename().isBlank()).toList();
        if (files.isEmpty() || files.size() > MOST_FILES) {
            throw new Refused(422, List.of(new Problem("files", Integer.toString(files.size()), "One to " + MOST_FILES + " files are needed.",
                    "Choose the files and send them again.")));
        }
        HandoverWork work = new HandoverWork(store, Asking.of(request), files);
        keep(work);
        work.look(worker, List.of());
        request.status(202).json(work.view());
    }

    private synchronized void keep(HandoverWork work) {
        Instant oldest = store.clock().instant().minus(LONGEST_WAIT);
        List<HandoverWork> forgotten = new ArrayList<>(works.values().stream().filter(each -> each.isIdle() && each.touchedBefore(oldest)).toList());
        works.values().stream().filter(HandoverWork::isIdle).filter(each -> !forgotten.contains(each)).limit(Math.max(0, works.size() - forgotten.size() - MOST + 1))
                .forEach(forgotten::add);
        forgotten.forEach(each -> {
            works.remove(each.id());
            each.forget();
        });
        works.put(work.id(), work);
    }

    void show(Context request) {
        request.json(of(request).view());
    }

    void answer(Context request) {
        AnswersForm form = Reader.body(request, AnswersForm.class);
        List<Said> said = Optional.ofNullable(form.files()).orElse(List.of());
        HandoverWork work = of(request);
        work.look(worker, said.stream().map(each -> new Answers(Optional.ofNullable(each.answers()).orElse(Map.of()),
                Optional.ofNullable(each.columns()).flatMap(columns -> columns))).toList());
        request.status(202).json(work.view());
    }

    void take(Context request) {
        HandoverWork work = of(request);
        work.take(worker);
        request.status(202).json(work.view());
    }

    /** Stops what goes on and forgets the files; what was taken in already stays. */
    void stop(Context request) {
        HandoverWork work = of(request);
        work.stop();
        request.json(work.view());
    }

    /** Only whoever handed the files over comes to them again. */
    private synchronized HandoverWork of(Context request) {
        HandoverWork work = works.get(request.pathParam("handover"));
        if (work == null || !work.isOf(Asking.of(request))) {
            throw new Refused(404, List.of(new Problem("handover", request.pathParam("handover"), "These files are not here any more.",
                    "Hand them over again.")));
        }
        return work;
    }

    @Override
    public void close() {
        synchronized (this) {
            works.values().forEach(HandoverWork::stop);
        }
        worker.shutdown();
        try {
            if (!worker.awaitTermination(LONGEST_GOODBYE_SECONDS, TimeUnit.SECONDS)) {
                worker.shutdownNow();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Where the files of one handover lie. */
    static List<Path> saved(List<UploadedFile> files, Path directory) throws IOException {
        List<Path> saved = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            saved.add(ImportApi.saved(files.get(i), directory, "file-" + (i + 1) + ".csv"));
        }
        return saved;
    }

    /** Not to be guessed. */
    static String newId() {
        return Secret.id("h");
    }
}
