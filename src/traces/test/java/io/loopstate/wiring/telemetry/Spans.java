package io.loopstate.wiring.telemetry;

import io.opentelemetry.sdk.common.CompletableResultCode;
import io.opentelemetry.sdk.trace.data.SpanData;
import io.opentelemetry.sdk.trace.export.SpanExporter;
import jakarta.inject.Singleton;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Keeps what would be sent to a collector. */
@Singleton
public class Spans implements SpanExporter {
    private final List<SpanData> kept = new CopyOnWriteArrayList<>();

    List<SpanData> kept() {
        return kept;
    }

    @Override
    public CompletableResultCode export(Collection<SpanData> spans) {
        kept.addAll(spans);
        return CompletableResultCode.ofSuccess();
    }

    @Override
    public CompletableResultCode flush() {
        return CompletableResultCode.ofSuccess();
    }

    @Override
    public CompletableResultCode shutdown() {
        return CompletableResultCode.ofSuccess();
    }
}
