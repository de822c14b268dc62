package fifthform.probe.link;

/** Where a line can be opened whose settings are still to be found out. */
public interface TunableSource extends LinkSource {
    @Override
    TunableLink open() throws LinkException;
}
