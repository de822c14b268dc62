package fifthform.monitor.app;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.monitor.intake.CsvTape;
import fifthform.probe.Spoken;
import fifthform.probe.find.KnownProbe;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Set-ups from what a command was given. */
final class Setups {
    static final ProbeId BOWL = new ProbeId("bowl");
    static final ProbeId BATH = new ProbeId("bath");
    static final ProbeId ROOM = new ProbeId("room");

    private Setups() {}

    /** A bowl by the maker's name for it; a name that holds a material says what the wall is made of. */
    static Bowl bowl(String name, OptionalDouble amountGrams) {
        BowlMaterial material = BowlMaterial.UNKNOWN;
        for (BowlMaterial m : BowlMaterial.values()) {
            if (name.toLowerCase(Locale.ROOT).contains(m.word())) material = m;
        }
        return new Bowl(name, material, amountGrams, Optional.empty());
    }

    static ProbeSetup probe(ProbeId id, Role role, String talk, String place) {
        return new ProbeSetup(id, role, talk, place, Correction.UNCHECKED, ProbeSetup.USUAL_LAG_SECONDS);
    }

    /** A probe of which nothing is remembered: what its adapter's talk tells of thermocouple and converter holds. */
    static ProbeSetup unchecked(ProbeId id, Role role, Spoken spoken, String place) {
        return new ProbeSetup(
                id,
                role,
                spoken.talk().toString(),
                place,
                Correction.UNCHECKED,
                ProbeSetup.USUAL_LAG_SECONDS,
                spoken.protocol().sensor());
    }

    /** A probe of which something is remembered: thermocouple, correction of its last check, lag of its tip. */
    static ProbeSetup probe(ProbeId id, String talk, String place, KnownProbe known) {
        return new ProbeSetup(
                id,
                known.role(),
                talk,
                place,
                known.correction(),
                known.lagSeconds().orElse(ProbeSetup.USUAL_LAG_SECONDS),
                known.sensor());
    }

    /** The set-up for a file of readings about which nothing more is known. */
    static Setup forFile(Recipe recipe, String file, List<Role> roles) {
        return ofTable(recipe, Bowl.ANY, file, roles);
    }

    /** The set-up for a table of readings from this bowl. */
    static Setup ofTable(Recipe recipe, Bowl bowl, String file, List<Role> roles) {
        List<ProbeSetup> probes = roles.stream()
                .map(role -> probe(new ProbeId(role.word()), role, CsvTape.TALK, file))
                .toList();
        return new Setup(
                recipe,
                bowl,
                probes,
                Setup.USUAL_REACTION,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Origin.REAL,
                Approach.TOUCHES_WHERE_UNSURE,
                OptionalDouble.empty(),
                Beginning.WHOLE,
                Optional.empty());
    }
}
