/** The Watch screen without a window: a full terminal, or plain lines for pipes and screen readers. */
package fifthform.monitor.terminal;
