import { Body, Controller, Get, Header, HttpCode, Param, Post, Put, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { PageQuery, Photo, PhotosOfPlaceQuery, PictureContent, PutPhoto, ThingPath, TrayFrame, WithdrawPhoto } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Caller, TheCaller } from '../http/caller.ts';
import { answerPart } from '../http/part-of-list.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { type Answered, PhotoService } from './photo.service.ts';

@Controller('programmes/:programme')
export class PhotoController {
  constructor(private readonly photos: PhotoService) {}

  /**
   * Keeps a photo of a batch, a donor tree or a place: the body is the picture itself, as image/jpeg, image/png or image/webp.
   * It is encoded anew, at most 2,048 pixels a side, and all that the file told of place, time and camera is left out. Sending it twice keeps it once.
   */
  @Put('photos/:id')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Photo })
  keep(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Query({ schema: PutPhoto }) told: PutPhoto,
    @Body({ schema: PictureContent }) content: PictureContent,
    @TheCaller() caller: Caller,
  ): Promise<Photo> {
    return this.photos.keep(caller, id, told, Buffer.from(content.buffer, content.byteOffset, content.byteLength));
  }

  /** The picture, up to 2,048 pixels a side. */
  @Get('photos/:id/large')
  @Allow(...MEMBERS)
  @Header('content-type', 'image/jpeg')
  async large(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller, @Res({ passthrough: true }) reply: FastifyReply): Promise<Buffer> {
    return answerPicture(await this.photos.picture(caller, id, 'large'), reply);
  }

  /** The picture, up to 320 pixels a side. */
  @Get('photos/:id/small')
  @Allow(...MEMBERS)
  @Header('content-type', 'image/jpeg')
  async small(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller, @Res({ passthrough: true }) reply: FastifyReply): Promise<Buffer> {
    return answerPicture(await this.photos.picture(caller, id, 'small'), reply);
  }

  /** Says where the tray lies in its portrait, so that its rows can be drawn over it. The last one told holds. */
  @Put('photos/:id/frame')
  @HttpCode(204)
  @Allow(...MEMBERS)
  async frame(@Param({ schema: ThingPath }) { id }: ThingPath, @Body({ schema: TrayFrame }) frame: TrayFrame, @TheCaller() caller: Caller): Promise<void> {
    await this.photos.frame(caller, id, frame);
  }

  /** Photos of a batch, newest first, in parts; the next part stands in `Link`. */
  @Get('batches/:id/photos')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Photo.array() })
  async ofBatch(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Query({ schema: PageQuery }) query: PageQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<Photo[]> {
    return answerPart(await this.photos.list(caller, 'batches', id, query), request, reply);
  }

  /** Photos of a donor tree, newest first, in parts. Those that show where it stands are for people who see exact places. */
  @Get('donor-trees/:id/photos')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Photo.array() })
  async ofDonorTree(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Query({ schema: PageQuery }) query: PageQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<Photo[]> {
    return answerPart(await this.photos.list(caller, 'donor-trees', id, query), request, reply);
  }

  /** Photos of a place, newest first, in parts; tray portraits among them. */
  @Get('places/:id/photos')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Photo.array() })
  async ofPlace(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Query({ schema: PhotosOfPlaceQuery }) query: PhotosOfPlaceQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<Photo[]> {
    return answerPart(await this.photos.list(caller, 'places', id, query), request, reply);
  }

  /** Takes a photo down for good, with the reason. Its picture is removed unless another photo is the same. */
  @Post('photos/:id/withdrawal')
  @HttpCode(204)
  @Allow(...DESK)
  async withdraw(@Param({ schema: ThingPath }) { id }: ThingPath, @Body({ schema: WithdrawPhoto }) { reason }: WithdrawPhoto, @TheCaller() caller: Caller): Promise<void> {
    await this.photos.withdraw(caller, id, reason);
  }
}

/** Kept by the browser of whoever asked, and asked for anew each time: what was taken down must not be shown again. */
function answerPicture({ bytes, hash, takenOn }: Answered, reply: FastifyReply): Buffer {
  void reply.headers({
    etag: `"${hash.toString('base64url')}"`,
    'cache-control': 'private, no-cache',
    'content-disposition': `inline; filename="photo-${takenOn}.jpg"`,
  });
  return bytes;
}
