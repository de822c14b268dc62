/** Best present temperature of the chocolate, its rate, their uncertainty, and how fresh they are. */
package fifthform.curves.estimate;
