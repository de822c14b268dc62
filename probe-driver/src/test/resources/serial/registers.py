"""A Modbus RTU server by pymodbus (Debian: python3-pymodbus 3.0), an end that is not ours.

usage: registers.py PORT BUSY   every BUSY-th question is answered with "busy" (0: never)

zero_mode: without it pymodbus adds one to every address, and register 0 would answer as 1.
"""
import struct
import sys

from pymodbus.datastore import ModbusServerContext, ModbusSlaveContext, ModbusSparseDataBlock
from pymodbus.pdu import ModbusExceptions
from pymodbus.register_read_message import ReadInputRegistersRequest
from pymodbus.server import StartSerialServer
from pymodbus.transaction import ModbusRtuFramer

port, busy = sys.argv[1], int(sys.argv[2])


def words(form, value):
    return list(struct.unpack(">HH", struct.pack(form, value)))


def registers(kelvin):
    """Temperatures, kelvin warmer than those of the input registers; addresses counted from 0."""
    t = 31.5 + kelvin
    return {
        0: 300,
        8: int(t * 10),
        9: 411,
        10: 255,
        20: words(">f", t),
        22: words(">f", t)[::-1],
        24: words(">i", int(t * 1000)),
        26: words(">i", int(t * 1000))[::-1],
        28: words(">I", int(t * 1000)),
        30: words(">I", int(t * 1000))[::-1],
        32: int(t * 1000),
        33: 0x10000 - 25,
        34: 0x7FFF,
        36: words(">f", float("nan")),
        38: words(">i", -2500),
    }


class Counting(ModbusSparseDataBlock):
    """Register 0 grows by a tenth with every reading."""

    def getValues(self, address, count=1):
        values = super().getValues(address, count)
        if address == 0:
            self.setValues(0, [values[0] + 1])
        return values


asked = 0
answer = ReadInputRegistersRequest.execute


def execute(self, context):
    global asked
    asked += 1
    if busy and asked % busy == 0:
        return self.doException(ModbusExceptions.SlaveBusy)
    return answer(self, context)


ReadInputRegistersRequest.execute = execute
unit = ModbusSlaveContext(ir=Counting(registers(0)), hr=ModbusSparseDataBlock(registers(10)), zero_mode=True)
StartSerialServer(
    context=ModbusServerContext(slaves={17: unit}, single=False),
    framer=ModbusRtuFramer,
    port=port,
    baudrate=19200,
    parity="N",
    timeout=0.05,
)
