import { Clipper64, ClipType, FillRule, PathType } from "clipper2-ts";
