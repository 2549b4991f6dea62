/** Published formulas, each with its source beside it. A formula knows no limit, no entry and no job. */
package screedbook.calc;
