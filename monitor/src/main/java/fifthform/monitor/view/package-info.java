/**
 * The screens in windows: nodes that draw a picture, a {@link fifthform.monitor.model.WatchPicture} or a
 * {@link fifthform.monitor.replay.ReplayPicture}, and ask nothing else.
 */
package fifthform.monitor.view;
