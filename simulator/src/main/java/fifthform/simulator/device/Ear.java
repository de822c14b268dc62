package fifthform.simulator.device;

import java.util.List;

/** The receiving half of an adapter that speaks only when asked. Lives as long as one open line. */
interface Ear {
    /**
     * Takes bytes as they were written; where one chunk ends carries no meaning.
     *
     * @param said what the adapter has to say now
     * @return the answers, most often none or one
     */
    List<byte[]> hears(byte[] written, Said said);
}
