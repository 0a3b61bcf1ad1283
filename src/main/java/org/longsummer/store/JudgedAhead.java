package org.longsummer.store;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ObjIntConsumer;
import org.jdbi.v3.core.Handle;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.visit.Unit;

/**
 * The verdicts of what is brought, worked out before the record is held and kept in a temporary file, so that whoever saves a visit meanwhile
 * does not wait for it. When they are written, a unit that was changed meanwhile, or that got another visit, is left to be judged again.
 */
final class JudgedAhead implements AutoCloseable {
    private static final int UNITS_AT_ONCE = 200;

    private final Gathered gathered;
    private final ObjIntConsumer<String> done;
    private final Path file;
    private final Closings closings;
    private final Map<String, Unit> units = new HashMap<>();

    /** @param done told what was done, and to how many */
    JudgedAhead(Gathered gathered, ObjIntConsumer<String> done) throws IOException {
        this.gathered = gathered;
        this.done = done;
        this.file = Files.createTempFile("longsummer-verdicts", ".packed");
        try (PackedFleet fleet = new PackedFleet(gathered.visits(), gathered.units(), Runtime.getRuntime().availableProcessors(), done);
                OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16)) {
            closings = gathered.learnsAnew() ? fleet.learn(gathered.basis().today()) : gathered.known();
            fleet.judge(closings, Judged::new, out);
        } catch (IOException | RuntimeException | Error e) {
            close();
            throw e;
        }
        gathered.units().forEach(unit -> units.put(unit.id(), unit));
    }

    /** Verdicts of some units as bytes: a unit's id, how many there are, its standing and the verdicts. */
    private static final class Judged implements PackedFleet.Written {
        private final ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
        private final DataOutputStream out = new DataOutputStream(bytes);
        private final PackedRows standings = new PackedRows(StandingRow.UPDATE_JUDGED, out);
        private final PackedRows rows = new PackedRows(VerdictRow.INSERT, out);

        @Override
        public void unit(Unit unit, List<Verdict> verdicts) {
            try {
                out.writeUTF(unit.id());
                out.writeInt(verdicts.size());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            StandingRow.bindJudged(standings, unit.id(), verdicts).add();
            verdicts.forEach(verdict -> VerdictRow.bind(rows, verdict).add());
        }

        @Override
        public byte[] bytes() {
            return bytes.toByteArray();
        }
    }

    Gathered gathered() {
        return gathered;
    }

    Closings closings() {
        return closings;
    }

    /** What was brought can be stored as it was judged, but for units that {@link #write} leaves. */
    boolean holds(Handle handle, Basis now) {
        Basis basis = gathered.basis();
        if (!basis.isContinuedBy(now) || gathered.learnsAnew() && !basis.teachesTheSame(handle)) {
            return false;
        }
        Set<String> since = basis.visitsSince(handle);
        if (!since.isEmpty()) {
            for (int row : gathered.fresh()) {
                if (since.contains(gathered.visits().id(row))) {
                    return false;
                }
            }
        }
        return true;
    }

    /**
     * Writes verdicts and standings.
     *
     * @param others units of which other visits count now
     * @return the units whose verdicts were written
     */
    Set<String> write(Handle handle, Set<String> others) throws IOException {
        Set<String> written = new HashSet<>();
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(Files.newInputStream(file), 1 << 16));
                StatementRows standings = new StatementRows(handle, StandingRow.UPDATE_JUDGED);
                StatementRows verdicts = new StatementRows(handle, VerdictRow.INSERT)) {
            for (List<OfUnit> some = read(in); !some.isEmpty(); some = read(in)) {
                Set<String> same = unchanged(handle, some, others);
                Verdicts.remove(handle, same);
                LookingAhead.overtake(handle, same);
                some.stream().filter(unit -> same.contains(unit.unitId())).forEach(unit -> {
                    standings.take(unit.standing());
                    unit.verdicts().forEach(verdicts::take);
                    done.accept("verdicts stored", unit.verdicts().size());
                });
                verdicts.execute();
                standings.execute();
                written.addAll(same);
            }
        }
        return written;
    }

    private record OfUnit(String unitId, Object[] standing, List<Object[]> verdicts) {}

    private static List<OfUnit> read(DataInputStream in) throws IOException {
        List<OfUnit> some = new ArrayList<>();
        while (some.size() < UNITS_AT_ONCE && isMore(in)) {
            String unitId = in.readUTF();
            int count = in.readInt();
            Object[] standing = PackedRows.read(in);
            List<Object[]> verdicts = new ArrayList<>(count);
            for (int i = 0; i < count; i++) {
                verdicts.add(PackedRows.read(in));
            }
            some.add(new OfUnit(unitId, standing, verdicts));
        }
        return some;
    }

    private static boolean isMore(DataInputStream in) throws IOException {
        in.mark(1);
        boolean more = in.read() >= 0;
        in.reset();
        return more;
    }

    /** Those that are stored as they were judged. */
    private Set<String> unchanged(Handle handle, List<OfUnit> some, Set<String> others) {
        Set<String> same = new HashSet<>();
        Units.among(handle, some.stream().map(OfUnit::unitId).toList()).stream().map(FleetUnit::unit)
                .filter(unit -> unit.equals(units.get(unit.id())) && !others.contains(unit.id())).forEach(unit -> same.add(unit.id()));
        return same;
    }

    @Override
    public void close() {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
