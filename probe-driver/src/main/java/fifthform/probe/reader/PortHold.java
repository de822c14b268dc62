package fifthform.probe.reader;

/** Whether the reader may have the port at present, and whether it has it: both sides agree here and nowhere else. */
final class PortHold {
    private boolean released;
    private boolean held;

    /** The reader wants the port; false while it is released. */
    synchronized boolean take() {
        if (released) return false;
        held = true;
        return true;
    }

    /** The reader no longer has it. */
    synchronized void letGo() {
        held = false;
        notifyAll();
    }

    synchronized boolean isReleased() {
        return released;
    }

    synchronized void release() {
        released = true;
    }

    synchronized void takeBack() {
        released = false;
    }

    /** Waits until the port is free for others, or is wanted back. */
    synchronized void awaitFree() throws InterruptedException {
        while (held && released) wait();
    }
}
