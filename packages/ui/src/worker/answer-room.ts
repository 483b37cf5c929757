import { readAirRecord, readRainRecord } from "@headfall/hydraulics";
import {
  answerBuild,
  answerCompare,
  answerCure,
  answerDay,
  answerDays,
  answerFront,
  answerMeasure,
  answerMishaps,
  answerRain,
  answerTime,
  answerTrouble,
  answerWeather,
  answerWeatherRecord,
  answerWeeks,
  answerYard,
  answerYear,
  type QuestionOf,
  type RoomProgress,
} from "./room-answers.js";
import type { RoomAnswer, RoomQuestion } from "./room-protocol.js";

type Answering<Kind extends RoomQuestion["kind"]> = (
  question: QuestionOf<Kind>,
  progress: RoomProgress,
) => RoomAnswer<Kind>;

const ANSWERS: { readonly [Kind in RoomQuestion["kind"]]: Answering<Kind> } = {
  weeks: answerWeeks,
  time: answerTime,
  day: answerDay,
  days: answerDays,
  measure: answerMeasure,
  record: ({ text, options }) => ({ ok: true, answer: readRainRecord(text, options) }),
  rain: answerRain,
  cure: answerCure,
  front: answerFront,
  compare: answerCompare,
  weather: answerWeather,
  airRecord: ({ text, options }) => ({ ok: true, answer: readAirRecord(text, options) }),
  weatherRecord: answerWeatherRecord,
  build: answerBuild,
  year: answerYear,
  yard: answerYard,
  mishaps: answerMishaps,
  trouble: answerTrouble,
};

/** Answers a room's question. */
export function answerRoom(
  question: RoomQuestion,
  progress: RoomProgress = () => undefined,
): RoomAnswer<RoomQuestion["kind"]> {
  const answer = ANSWERS[question.kind] as Answering<RoomQuestion["kind"]>;
  return answer(question, progress);
}
