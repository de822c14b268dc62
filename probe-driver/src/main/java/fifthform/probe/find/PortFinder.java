package fifthform.probe.find;

import java.util.List;

/** Finds ports of one kind. */
public interface PortFinder {
    List<FoundPort> find() throws InterruptedException;
}
