import { parentPort, workerData } from 'node:worker_threads';
import { type DrawJob, runDrawJob } from '../measure/cross-check.ts';

const jobs = workerData as readonly DrawJob[];
parentPort?.postMessage(jobs.map((job) => [job.key, runDrawJob(job)]));
