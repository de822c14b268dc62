"""An instrument that answers in the manner of SCPI, written for this test from the standard's text and not with our code.

usage: instrument.py PORT KIND
  full     knows *IDN?, UNIT:TEMP? (Fahrenheit) and MEAS:TEMP?, also with a list of channels
  plain    knows READ? only, ends lines with CR; everything else is an error in its queue
  volts    is set to volts: FUNC? says so, READ? gives them
  open     has no thermocouple plugged in
"""
import os
import sys

port, kind = sys.argv[1], sys.argv[2]
wire = os.open(port, os.O_RDWR | os.O_NOCTTY)
end = "\r" if kind == "plain" else "\r\n"
errors = []
count = 0


def fahrenheit(celsius):
    return "%+.8E" % (celsius * 9 / 5 + 32)


def reading(channels):
    global count
    count += 1
    if kind == "open":
        return ",".join(["+9.90000000E+37"] * channels)
    if kind == "volts":
        return "+1.27500000E-03"
    if kind == "plain":
        return "%.2f" % (31 + count / 100)
    return ",".join(fahrenheit(31 + count / 100 + 10 * channel) for channel in range(channels))


def answer(question):
    if question == "SYST:ERR?":
        return errors.pop(0) if errors else '+0,"No error"'
    if question == "READ?":
        return reading(1)
    if kind != "plain":
        if question == "*IDN?":
            return "Demo Instruments,DT-%s,0001,1.0" % kind
        if question == "FUNC?" and kind == "volts":
            return '"VOLT:DC"'
        if question == "UNIT:TEMP?" and kind == "full":
            return "F"
        if question.startswith("MEAS:TEMP?") and kind != "volts":
            return reading(question.count(",") + 1)
    errors.append('-113,"Undefined header;%s"' % question)
    return None


pending = b""
while True:
    pending += os.read(wire, 256)
    while b"\n" in pending:
        line, pending = pending.split(b"\n", 1)
        said = answer(line.decode("ascii").strip())
        if said is not None:
            os.write(wire, (said + end).encode("ascii"))
