import { Body, Controller, Get, HttpCode, Param, Post, Put, SerializeOptions } from '@nestjs/common';
import { Device, ProgrammePath, SetDeviceAside, TellDevice, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { DeviceService } from './device.service.ts';

@Controller('programmes/:programme/devices')
export class DeviceController {
  constructor(private readonly devices: DeviceService) {}

  /** Phones and tablets that log, at most 300: first those on which entries may be stuck. Volunteers are told of their own. */
  @Get()
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Device.array() })
  list(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<Device[]> {
    return this.devices.list(caller);
  }

  /** How many entries are only on a device, as it says itself. What it says holds until it says something else; no entry depends on it. */
  @Put(':id')
  @HttpCode(204)
  @Allow(...MEMBERS)
  async hear(@Param({ schema: ThingPath }) { id }: ThingPath, @Body({ schema: TellDevice }) told: TellDevice, @TheCaller() caller: Caller): Promise<void> {
    await this.devices.hear(caller, id, told);
  }

  /** Puts a device aside as lost or no longer used, with the reason. It comes back by itself when it is heard again. */
  @Post(':id/setting-aside')
  @HttpCode(204)
  @Allow(...DESK)
  async setAside(@Param({ schema: ThingPath }) { id }: ThingPath, @Body({ schema: SetDeviceAside }) { reason }: SetDeviceAside, @TheCaller() caller: Caller): Promise<void> {
    await this.devices.setAside(caller, id, reason);
  }
}
