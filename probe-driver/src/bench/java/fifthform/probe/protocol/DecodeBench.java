package fifthform.probe.protocol;

import fifthform.probe.ProbeProtocol;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.ServiceLoader;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/** Lines or frames a second on one core, from bytes to signals; a chunk is what a read brings, 1000 lines of a slow probe. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class DecodeBench {
    private static final int LINES = 1000;

    /** Protocol, and a format for stamp (ms), tip (°C) and the tip's code in quarters of a degree. */
    @Param({
        "text-lines@%2$.2f",
        "text-lines@T: %2$.2f °C",
        "text-lines@tc=%2$.2f cj=24.50",
        "text-lines@T1:%2$.2f T2:41.00",
        "text-lines@bowl: %2$.1f bath: 45.0",
        "text-lines@%1$d;%2$.2f;24.50",
        "json-lines@{\"ms\":%1$d,\"tc\":%2$.2f,\"cj\":24.5}",
        "max31855@%4$04X1870",
        "max6675@%5$04X",
        "max31856@1900 %6$06X 00",
        "mcp9600@%3$04X",
        "millivolts@emf=1.264 mV cj=%2$.2f C",
        "kernel-files@name=max31855 in_temp_raw=%7$d in_temp_scale=250"
    })
    public String lines;

    private ProbeProtocol.Decoder decoder;
    private byte[] chunk;

    @Setup
    public void write() {
        String[] parts = lines.split("@", 2);
        decoder = ServiceLoader.load(ProbeProtocol.class).stream()
                .map(ServiceLoader.Provider::get)
                .filter(protocol -> protocol.id().equals(parts[0]))
                .findFirst()
                .orElseThrow()
                .newDecoder();
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < LINES; i++) {
            double celsius = 31 + Math.sin(i / 50.0);
            long quarters = Math.round(celsius * 4);
            text.append(String.format(
                            Locale.ROOT,
                            parts[1],
                            100_000 + 100 * i,
                            celsius,
                            Math.round(celsius * 16) | 2,
                            quarters << 2,
                            quarters << 3,
                            Math.round(celsius * 128) << 5,
                            quarters))
                    .append('\n');
        }
        chunk = text.toString().getBytes(StandardCharsets.UTF_8);
    }

    @Benchmark
    @OperationsPerInvocation(LINES)
    public void decode(Blackhole hole) {
        decoder.feed(chunk, hole::consume);
    }
}
