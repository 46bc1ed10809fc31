interface RemarksProps {
  readonly title: string;
  readonly remarks: readonly string[];
}

/** What is found on the truck, under one title; nothing where nothing is. */
export function Remarks({ title, remarks }: RemarksProps) {
  if (remarks.length === 0) return null;
  return (
    <div class="remarks">
      {title}
      <ul>
        {remarks.map((remark) => (
          <li key={remark}>{remark}</li>
        ))}
      </ul>
    </div>
  );
}
