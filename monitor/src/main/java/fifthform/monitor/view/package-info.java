/** The Watch screen in a window: nodes that draw a {@link fifthform.monitor.model.WatchPicture} and ask nothing else. */
package fifthform.monitor.view;
