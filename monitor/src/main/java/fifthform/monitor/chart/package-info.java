/** Canvases drawn by hand: the ladder of limits to scale and the trace with its forecast. */
package fifthform.monitor.chart;
