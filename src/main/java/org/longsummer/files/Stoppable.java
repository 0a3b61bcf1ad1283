package org.longsummer.files;

/** Progress of work that may be stopped at any of its steps; whatever it was in the middle of is then undone. */
public final class Stoppable implements Progress {
    private final Progress heard;
    private volatile boolean stopped;

    /** @param heard told of each step */
    public Stoppable(Progress heard) {
        this.heard = heard;
    }

    /** Thrown by the step after somebody stopped the work. */
    public static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Stopped() {
            super("Stopped; nothing was changed.");
        }
    }

    /** From another thread. */
    public void stop() {
        stopped = true;
    }

    public boolean isStopped() {
        return stopped;
    }

    @Override
    public void step(String what) {
        if (stopped) {
            throw new Stopped();
        }
        heard.step(what);
    }
}
