package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.Role;
import fifthform.monitor.adapters.Adapters;
import fifthform.monitor.adapters.KeptAdapter;
import fifthform.probe.find.KnownProbe;
import fifthform.probe.reader.ProbeLine;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AdapterMemoryTest {
    private static final String PORT = "/dev/demo-adapter";

    @TempDir
    Path folder;

    private Adapters adapters;

    @BeforeEach
    void empty() {
        adapters = new Adapters(folder);
    }

    @Test
    void whatIsOnWhichChannelAndTheLagOfTheBowlsTipAreKept() throws Exception {
        PortProbe choice = on(wired(Role.BOWL, 1), wired(Role.BATH, 2));
        new AdapterMemory(adapters).remember(choice);
        new AdapterMemory(adapters).remember(choice, OptionalDouble.of(3.2));
        List<KnownProbe> probes = kept().known().probes();
        assertEquals(
                List.of(Role.BOWL, Role.BATH),
                probes.stream().map(KnownProbe::role).toList());
        assertEquals(OptionalDouble.of(3.2), probes.get(0).lagSeconds());
        assertEquals(OptionalDouble.empty(), probes.get(1).lagSeconds());
        assertEquals("text-lines", kept().known().talk().toString());
    }

    @Test
    void theNextSessionBeginsWithTheLagAndLosesNothing() throws Exception {
        new AdapterMemory(adapters).remember(on(wired(Role.BOWL, 1)), OptionalDouble.of(3.2));
        PortProbe next = on(wired(Role.BOWL, 1));
        assertEquals(3.2, next.probes().get(0).lagSeconds());
        new AdapterMemory(adapters).remember(next);
        assertEquals(OptionalDouble.of(3.2), kept().known().probes().get(0).lagSeconds());
    }

    @Test
    void aChannelThatNobodyNamedIsNotGuessed() throws Exception {
        new AdapterMemory(adapters).remember(on(wired(Role.BOWL, ProbeLine.FIRST_TO_SPEAK)));
        assertEquals(List.of(), kept().known().probes());
    }

    private KeptAdapter kept() {
        return new KnownProbes(adapters.load()).at(PORT).orElseThrow();
    }

    private static PortProbe on(PortProbe.Wired... wired) {
        return new PortProbe(List.of(wired));
    }

    private PortProbe.Wired wired(Role role, int channel) throws Refusal {
        Adapter adapter = new Adapter(PORT, Protocols.named(Protocols.TEXT), List.of());
        return new PortProbe.Wired(
                new KnownProbes(adapters.load())
                        .setup(new ProbeId(role.word()), role, adapter.spoken(), PortName.parse(PORT), channel),
                adapter,
                channel);
    }
}
