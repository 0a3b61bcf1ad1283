package org.longsummer.log;

import java.time.Instant;
import java.util.List;
import org.slf4j.Marker;
import org.slf4j.event.Level;
import org.slf4j.event.LoggingEvent;
import org.slf4j.helpers.LegacyAbstractLogger;
import org.slf4j.helpers.MessageFormatter;
import org.slf4j.spi.LoggingEventAware;

/** Writes what is said under one name: our own events from information on, once serving; what libraries say from warnings on. */
final class EventLogger extends LegacyAbstractLogger implements LoggingEventAware {
    private static final long serialVersionUID = 1;
    private static final String OURS = "org.longsummer.";

    private final boolean ours;

    EventLogger(String name) {
        this.name = name;
        this.ours = name.startsWith(OURS);
    }

    @Override
    public void log(LoggingEvent event) {
        LogOutput.write(LogLine.of(Instant.now(), event.getLevel(), source(),
                MessageFormatter.basicArrayFormat(event.getMessage(), event.getArgumentArray()),
                event.getKeyValuePairs() == null ? List.of() : event.getKeyValuePairs(), event.getThrowable()));
    }

    @Override
    protected void handleNormalizedLoggingCall(Level level, Marker marker, String message, Object[] arguments, Throwable failure) {
        LogOutput.write(LogLine.of(Instant.now(), level, source(), MessageFormatter.basicArrayFormat(message, arguments), List.of(), failure));
    }

    private String source() {
        return ours ? "" : name;
    }

    @Override
    protected String getFullyQualifiedCallerName() {
        return null;
    }

    @Override
    public boolean isTraceEnabled() {
        return false;
    }

    @Override
    public boolean isDebugEnabled() {
        return false;
    }

    @Override
    public boolean isInfoEnabled() {
        return ours && LogOutput.isServing();
    }

    @Override
    public boolean isWarnEnabled() {
        return true;
    }

    @Override
    public boolean isErrorEnabled() {
        return true;
    }
}
